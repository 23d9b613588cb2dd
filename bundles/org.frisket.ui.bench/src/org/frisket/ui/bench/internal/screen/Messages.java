package org.frisket.ui.bench.internal.screen;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CalibrationDialog_cancel;
	public static String CalibrationDialog_card;
	public static String CalibrationDialog_forget;
	public static String CalibrationDialog_heading;
	public static String CalibrationDialog_implausible;
	public static String CalibrationDialog_keep;
	public static String CalibrationDialog_message;
	public static String CalibrationDialog_noLength;
	public static String CalibrationDialog_read;
	public static String CalibrationDialog_ruler;
	public static String CalibrationDialog_title;
	public static String CalibrationDialog_told;
	public static String Screens_notKept;

	static {
		initializeMessages("org.frisket.ui.bench.internal.screen.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
