package org.frisket.orders.work;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Gang_layout;
	public static String Gang_nothing;
	public static String Gang_planned;
	public static String Gang_remark;
	public static String Gang_stage;
	public static String Gang_title;
	public static String JobStages_forgotten;
	public static String RunBook_cut;
	public static String RunBook_noRun;
	public static String RunBook_nothingSaid;
	public static String RunBook_printed;
	public static String RunBook_stays;
	public static String RunBook_takenBack;
	public static String RunTime_none;
	public static String StudioReports_estimated;
	public static String StudioReports_leftovers;
	public static String StudioReports_measured;
	public static String StudioReports_minutes;
	public static String StudioReports_noStock;
	public static String StudioReports_pieces;
	public static String StudioReports_planned;
	public static String StudioReports_ratio;
	public static String StudioReports_run;
	public static String StudioReports_runs;
	public static String StudioReports_spoiled;
	public static String StudioReports_stocks;
	public static String StudioReports_times;
	public static String StudioReports_used;
	public static String StudioReports_uses;
	public static String StudioReports_utilisation;
	public static String TodayList_nothing;

	static {
		initializeMessages("org.frisket.orders.work.messages", Messages.class);
	}

	private Messages() {
	}
}
