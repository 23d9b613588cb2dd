package org.frisket.ui.orders.internal.book;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BookAccess_name;
	public static String BookActions_filling;
	public static String BookActions_noOwnFilter;
	public static String BookActions_ordering;
	public static String BookActions_reading;
	public static String BookActions_removing;
	public static String BookActions_saveName;
	public static String BookActions_saveTitle;
	public static String BookActions_saving;
	public static String BookActions_selectFirst;
	public static String BookFinder_finding;
	public static String BookText_all;
	public static String BookText_awaiting;
	public static String BookText_byCustomer;
	public static String BookText_byStage;
	public static String BookText_byStock;
	public static String BookText_byWeek;
	public static String BookText_dueThisWeek;
	public static String BookText_dueToday;
	public static String BookText_heading;
	public static String BookText_late;
	public static String BookText_lateJobs;
	public static String BookText_lateOne;
	public static String BookText_noCustomer;
	public static String BookText_noDue;
	public static String BookText_noStock;
	public static String BookText_spoken;
	public static String BookText_toCut;
	public static String BookText_ungrouped;
	public static String BookText_week;
	public static String BookView_clear;
	public static String BookView_empty;
	public static String BookView_fill;
	public static String BookView_first;
	public static String BookView_found;
	public static String BookView_jobs;
	public static String BookView_late;
	public static String BookView_nothing;
	public static String BookView_oneJob;
	public static String BookView_reading;
	public static String BookView_selected;
	public static String FilterBar_filter;
	public static String FilterBar_groups;
	public static String FilterBar_words;
	public static String GridColumn_customer;
	public static String GridColumn_due;
	public static String GridColumn_number;
	public static String GridColumn_picture;
	public static String GridColumn_quantity;
	public static String GridColumn_stage;
	public static String GridColumn_stock;
	public static String GridColumn_title;
	public static String NewOrderDialog_customer;
	public static String NewOrderDialog_customers;
	public static String NewOrderDialog_due;
	public static String NewOrderDialog_dueHint;
	public static String NewOrderDialog_message;
	public static String NewOrderDialog_noNumber;
	public static String NewOrderDialog_notes;
	public static String NewOrderDialog_quantity;
	public static String NewOrderDialog_take;
	public static String NewOrderDialog_title;
	public static String NewOrderDialog_what;
	public static String RefusedDialog_line;
	public static String RefusedDialog_title;
	public static String RefusedDialog_words;
	public static String StageDialog_many;
	public static String StageDialog_message;
	public static String StageDialog_move;
	public static String StageDialog_one;
	public static String StageDialog_remark;
	public static String StageDialog_title;
	public static String StageHistory_move;
	public static String StageHistory_moveOne;
	public static String StageHistory_name;
	public static String StageMoves_calledOff;
	public static String StageMoves_job;
	public static String StageMoves_overtaken;
	public static String StockNames_reading;
	public static String Thumbnails_making;
	public static String UnreadableLine_asking;
	public static String UnreadableLine_many;
	public static String UnreadableLine_more;
	public static String UnreadableLine_one;

	static {
		initializeMessages("org.frisket.ui.orders.internal.book.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
