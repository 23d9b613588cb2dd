package org.frisket.sheets;

import org.eclipse.osgi.util.NLS;

/** Texts for people. */
final class Messages extends NLS {

	public static String GuestFiles_noFile;
	public static String GuestFiles_unreadable;
	public static String SheetFindings_inCure;
	public static String SheetFindings_margin;
	public static String SheetFindings_missing;
	public static String SheetFindings_missingCure;
	public static String SheetFindings_moveCure;
	public static String SheetFindings_near;
	public static String SheetFindings_over;
	public static String SheetFindings_overlap;
	public static String SheetName_sheet;

	static {
		initializeMessages("org.frisket.sheets.messages", Messages.class);
	}

	private Messages() {
	}
}
