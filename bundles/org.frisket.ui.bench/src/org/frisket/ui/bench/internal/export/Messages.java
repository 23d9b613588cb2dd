package org.frisket.ui.bench.internal.export;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ExportDialog_blocking;
	public static String ExportDialog_browse;
	public static String ExportDialog_cancel;
	public static String ExportDialog_export;
	public static String ExportDialog_exportAnyway;
	public static String ExportDialog_format;
	public static String ExportDialog_heading;
	public static String ExportDialog_isFolder;
	public static String ExportDialog_message;
	public static String ExportDialog_noFolder;
	public static String ExportDialog_noFormats;
	public static String ExportDialog_noPlace;
	public static String ExportDialog_oneBlocking;
	public static String ExportDialog_place;
	public static String ExportDialog_replace;
	public static String ExportDialog_title;
	public static String ExportDialog_willReplace;
	public static String ExportJob_failed;
	public static String ExportJob_name;
	public static String ExportRun_blocked;
	public static String ExportRun_blockedTitle;
	public static String ExportRun_cancelled;
	public static String ExportRun_exported;
	public static String ExportRun_failed;
	public static String ExportRun_failedTitle;

	static {
		initializeMessages("org.frisket.ui.bench.internal.export.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
