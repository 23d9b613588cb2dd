package org.frisket.orders;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String JobChanged;
	public static String NewOrder_noTitle;
	public static String NewOrder_quantity;
	public static String NewOrder_tooLong;
	public static String OrderBook_nothingToUndo;
	public static String OrderBook_sameStage;

	static {
		initializeMessages("org.frisket.orders.messages", Messages.class);
	}

	private Messages() {
	}
}
