package org.frisket.ui.orders.internal.today;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String DoneDialog_cut;
	public static String DoneDialog_made;
	public static String DoneDialog_offcuts;
	public static String DoneDialog_ok;
	public static String DoneDialog_piece;
	public static String DoneDialog_printed;
	public static String DoneDialog_remark;
	public static String DoneDialog_rest;
	public static String DoneDialog_spoiled;
	public static String DoneDialog_time;
	public static String DoneDialog_timeHint;
	public static String DoneDialog_used;
	public static String DoneDialog_well;
	public static String LayTogether_best;
	public static String LayTogether_name;
	public static String SheetCount_name;
	public static String SheetCount_one;
	public static String SheetCount_sheets;
	public static String TodayActions_anyway;
	public static String TodayActions_back;
	public static String TodayActions_done;
	public static String TodayActions_job;
	public static String TodayActions_laid;
	public static String TodayActions_moves;
	public static String TodayActions_noRun;
	public static String TodayActions_off;
	public static String TodayActions_offAsk;
	public static String TodayActions_rule;
	public static String TodayColumn_coming;
	public static String TodayColumn_finish;
	public static String TodayColumn_for;
	public static String TodayColumn_group;
	public static String TodayColumn_head;
	public static String TodayColumn_line;
	public static String TodayColumn_missing;
	public static String TodayColumn_noDay;
	public static String TodayColumn_presses;
	public static String TodayColumn_run;
	public static String TodayRead_colour;
	public static String TodayRead_noStock;
	public static String TodayView_cut;
	public static String TodayView_empty;
	public static String TodayView_finish;
	public static String TodayView_pick;
	public static String TodayView_picked;
	public static String TodayView_pickedSheets;
	public static String TodayView_print;
	public static String TodayView_reading;

	static {
		initializeMessages("org.frisket.ui.orders.internal.today.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
