package org.frisket.ui.print.internal.profiles;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PrinterDialog_across;
	public static String PrinterDialog_anew;
	public static String PrinterDialog_cancel;
	public static String PrinterDialog_designed;
	public static String PrinterDialog_disagree;
	public static String PrinterDialog_down;
	public static String PrinterDialog_falling;
	public static String PrinterDialog_fileName;
	public static String PrinterDialog_heading;
	public static String PrinterDialog_keep;
	public static String PrinterDialog_message;
	public static String PrinterDialog_name;
	public static String PrinterDialog_notWritten;
	public static String PrinterDialog_problem;
	public static String PrinterDialog_rising;
	public static String PrinterDialog_sheet;
	public static String PrinterDialog_title;
	public static String PrinterDialog_told;
	public static String PrinterDialog_write;
	public static String PrinterDialog_writeTitle;
	public static String PrinterDialog_written;
	public static String PrintersPage_across;
	public static String PrintersPage_degrees;
	public static String PrintersPage_down;
	public static String PrintersPage_measure;
	public static String PrintersPage_measured;
	public static String PrintersPage_note;
	public static String PrintersPage_percent;
	public static String PrintersPage_printer;
	public static String PrintersPage_remove;
	public static String PrintersPage_removeTitle;
	public static String PrintersPage_removeWords;
	public static String PrintersPage_rename;
	public static String PrintersPage_renameTitle;
	public static String PrintersPage_renameWords;
	public static String PrintersPage_skew;
	public static String PrintersPage_taken;
	public static String StudioPrinters_name;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
