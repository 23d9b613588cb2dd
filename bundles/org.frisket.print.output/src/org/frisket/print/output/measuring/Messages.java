package org.frisket.print.output.measuring;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String PrinterSheetFile_across;
	public static String PrinterSheetFile_down;
	public static String PrinterSheetFile_falling;
	public static String PrinterSheetFile_how;
	public static String PrinterSheetFile_rising;
	public static String PrinterSheetFile_scale;
	public static String PrinterSheetFile_title;
	public static String PrinterSheetFile_written;

	static {
		initializeMessages("org.frisket.print.output.measuring.messages", Messages.class);
	}

	private Messages() {
	}
}
