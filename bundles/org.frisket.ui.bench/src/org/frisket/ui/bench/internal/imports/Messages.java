package org.frisket.ui.bench.internal.imports;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {

	public static String ImportDialog_cancel;
	public static String ImportDialog_file;
	public static String ImportDialog_heading;
	public static String ImportDialog_import;
	public static String ImportDialog_message;
	public static String ImportDialog_reading;
	public static String ImportDialog_remark;
	public static String ImportDialog_title;
	public static String ImportDialog_unit;
	public static String ImportWords_files;
	public static String ImportWords_nothing;
	public static String ImportWords_size;
	public static String PageDialog_noPage;
	public static String PageDialog_page;
	public static String PageDialog_title;
	public static String PictureReplacement_failed;
	public static String PictureReplacement_name;
	public static String ReadJob_name;
	public static String ReadJob_noFormat;
	public static String TakeRun_cancelled;
	public static String TakeRun_empty;
	public static String TakeRun_failed;
	public static String TakeRun_failedTitle;
	public static String TakeRun_name;
	public static String TakeRun_taken;
	public static String UnitQuestion_asked;
	public static String UnitQuestion_choice;

	static {
		initializeMessages("org.frisket.ui.bench.internal.imports.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
