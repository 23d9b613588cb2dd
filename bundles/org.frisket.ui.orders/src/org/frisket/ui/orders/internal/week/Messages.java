package org.frisket.ui.orders.internal.week;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String DueMove_name;
	public static String DueMoves_name;
	public static String WeekAccess_card;
	public static String WeekStrip_late;
	public static String WeekStrip_lateHead;
	public static String WeekStrip_laterHead;
	public static String WeekStrip_more;
	public static String WeekStrip_name;
	public static String WeekStrip_spoken;
	public static String WeekStrip_today;
	public static String WeekView_empty;
	public static String WeekView_reading;

	static {
		initializeMessages("org.frisket.ui.orders.internal.week.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
