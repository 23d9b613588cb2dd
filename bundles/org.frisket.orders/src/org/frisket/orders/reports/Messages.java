package org.frisket.orders.reports;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String OnTimeTable_byMonth;
	public static String OnTimeTable_byWeek;
	public static String OnTimeTable_dated;
	public static String OnTimeTable_daysLate;
	public static String OnTimeTable_delivered;
	public static String OnTimeTable_month;
	public static String OnTimeTable_onTime;
	public static String OnTimeTable_rate;
	public static String OnTimeTable_week;
	public static String StageTable_between;
	public static String StageTable_days;
	public static String StageTable_jobs;
	public static String StageTable_late;
	public static String StageTable_oldest;
	public static String StageTable_over;
	public static String StageTable_stage;
	public static String StageTable_title;
	public static String StageTable_upTo;
	public static String Stage_approved;
	public static String Stage_cut;
	public static String Stage_designed;
	public static String Stage_enquiry;
	public static String Stage_finished;
	public static String Stage_onHold;
	public static String Stage_ordered;
	public static String Stage_printed;

	static {
		initializeMessages("org.frisket.orders.reports.messages", Messages.class);
	}

	private Messages() {
	}
}
