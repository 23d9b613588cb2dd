package org.frisket.ui.sheets.internal.sheets;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String BenchSheets_one;
	public static String BenchSheets_oneUnlaid;
	public static String BenchSheets_sheets;
	public static String BenchSheets_stale;
	public static String BenchSheets_unlaid;
	public static String KeptOffcut_job;
	public static String KeptOffcut_kept;
	public static String KeptOffcut_useJob;
	public static String KeptOffcut_used;
	public static String KeptOffcut_wasUsed;
	public static String LayBar_apart;
	public static String LayBar_apartTip;
	public static String LayBar_byJob;
	public static String LayBar_byJobTip;
	public static String LayBar_gap;
	public static String LayBar_gapTip;
	public static String LayBar_lay;
	public static String LayBar_layTip;
	public static String LayBar_margin;
	public static String LayBar_marginTip;
	public static String LayBar_ofStock;
	public static String LayBar_size;
	public static String LayBar_sizeTip;
	public static String LayBar_stop;
	public static String LayBar_stopTip;
	public static String LayBar_turnFree;
	public static String LayBar_turnHalf;
	public static String LayBar_turnNone;
	public static String LayBar_turnQuarter;
	public static String LayBar_turnTip;
	public static String LayFeedback_begun;
	public static String LayFeedback_better;
	public static String LayFeedback_left;
	public static String LayFeedback_oneSheet;
	public static String LayFeedback_sheet;
	public static String LayFeedback_sheets;
	public static String LayRun_failed;
	public static String LayRun_job;
	public static String MissingLine_forget;
	public static String MissingLine_forgetTip;
	public static String MissingLine_one;
	public static String MissingLine_several;
	public static String Offcut_job;
	public static String ReadJob_failed;
	public static String ReadJob_name;
	public static String ReadPrint_name;
	public static String SheetActions_leftover;
	public static String SheetActions_leftoverAsk;
	public static String SheetActions_noLeftover;
	public static String SheetActions_noOffcut;
	public static String SheetActions_offcut;
	public static String SheetActions_offcutAsk;
	public static String SheetActions_saveFirst;
	public static String SheetActions_takeAlong;
	public static String SheetsView_empty;
	public static String SheetsView_noBench;
	public static String SheetsView_oneUnlaid;
	public static String SheetsView_roll;
	public static String SheetsView_title;
	public static String SheetsView_titleCount;
	public static String SheetsView_two;
	public static String SheetsView_unlaid;
	public static String SheetsView_used;

	static {
		initializeMessages("org.frisket.ui.sheets.internal.sheets.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
