package org.frisket.ui.sheets.internal.run;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchRun_cancelled;
	public static String CostWords_material;
	public static String CostWords_seconds;
	public static String CostWords_share;
	public static String CostWords_shareMoney;
	public static String CostWords_time;
	public static String CostWords_total;
	public static String CostWords_totals;
	public static String LegTable_afterStop;
	public static String LegTable_leg;
	public static String LegTable_line;
	public static String LegTable_operation;
	public static String LegTable_settings;
	public static String LegTable_strokes;
	public static String LegTable_time;
	public static String LegTable_tool;
	public static String RunBar_calm;
	public static String RunBar_nextPart;
	public static String RunBar_nextStroke;
	public static String RunBar_nextTool;
	public static String RunBar_pause;
	public static String RunBar_play;
	public static String RunBar_previousPart;
	public static String RunBar_previousStroke;
	public static String RunBar_previousTool;
	public static String RunBar_speed;
	public static String RunBar_times;
	public static String RunBar_travel;
	public static String RunJob_bench;
	public static String RunJob_failed;
	public static String RunJob_missing;
	public static String RunJob_missingCure;
	public static String RunJob_name;
	public static String RunNotices_finding;
	public static String RunPage_time;
	public static String RunPainter_caption;
	public static String RunSheetFile_failed;
	public static String RunSheetFile_name;
	public static String RunSheetFile_title;
	public static String RunSheetFile_writing;
	public static String RunSheetFile_written;
	public static String RunSide_export;
	public static String RunSide_how;
	public static String RunSide_machine;
	public static String RunSide_plainMachine;
	public static String RunSide_record;
	public static String RunSide_sheet;
	public static String RunView_again;
	public static String RunView_empty;
	public static String RunView_noJob;
	public static String RunView_now;
	public static String RunView_stop;
	public static String RunView_working;
	public static String ScrubBar_name;

	static {
		initializeMessages("org.frisket.ui.sheets.internal.run.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
