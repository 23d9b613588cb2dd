package org.frisket.orders.work.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CheckedMark_amount;
	public static String CheckedMark_below;
	public static String CheckedMark_done;
	public static String CheckedMark_noPiece;
	public static String CheckedMark_nothing;
	public static String CheckedMark_time;
	public static String CheckedMark_tooMany;
	public static String CheckedMark_twice;
	public static String StockUse_gone;
	public static String StockUse_kept;
	public static String StockUse_leftoverGone;
	public static String StockUse_notShelved;
	public static String StockUse_offcutUsed;
	public static String StockUse_tooFew;

	static {
		initializeMessages("org.frisket.orders.work.internal.messages", Messages.class);
	}

	private Messages() {
	}
}
