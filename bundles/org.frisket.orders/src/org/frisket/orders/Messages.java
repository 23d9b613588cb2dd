package org.frisket.orders;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String JobChanged;
	public static String NewOrder_noTitle;
	public static String NewOrder_quantity;
	public static String NewOrder_tooLong;
	public static String OrderBook_alreadyThere;
	public static String OrderBook_damaged;
	public static String OrderBook_noJob;
	public static String OrderBook_nothingToUndo;
	public static String OrderBook_sameStage;
	public static String OrderBook_tooLarge;

	static {
		initializeMessages("org.frisket.orders.messages", Messages.class);
	}

	private Messages() {
	}
}
