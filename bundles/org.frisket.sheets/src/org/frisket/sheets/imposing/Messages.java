package org.frisket.sheets.imposing;

import org.eclipse.osgi.util.NLS;

/** Texts for people. */
final class Messages extends NLS {

	public static String JobImposer_tooMany;
	public static String LayingChoices_length;
	public static String LayingChoices_most;
	public static String NoRoom_roll;
	public static String NoRoom_tooFew;
	public static String NoRoom_tooLarge;
	public static String StockGroup_margin;
	public static String StockGroup_noRoll;

	static {
		initializeMessages("org.frisket.sheets.imposing.messages", Messages.class);
	}

	private Messages() {
	}
}
