package org.frisket.orders.work;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Gang_layout;
	public static String Gang_nothing;
	public static String Gang_planned;
	public static String Gang_remark;
	public static String Gang_stage;
	public static String Gang_title;
	public static String RunBook_cut;
	public static String RunBook_noRun;
	public static String RunBook_nothingSaid;
	public static String RunBook_printed;
	public static String RunBook_stays;
	public static String RunBook_takenBack;
	public static String RunTime_none;
	public static String TodayList_nothing;

	static {
		initializeMessages("org.frisket.orders.work.messages", Messages.class);
	}

	private Messages() {
	}
}
