package org.frisket.ui.print.internal.output;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CutPart_format;
	public static String FaceView_after;
	public static String FaceView_back;
	public static String FaceView_before;
	public static String FaceView_print;
	public static String FaceView_sheet;
	public static String FaceView_work;
	public static String FindingWords_line;
	public static String FindingWords_none;
	public static String PaperRun_anyway;
	public static String PaperRun_cancelled;
	public static String PaperRun_done;
	public static String PaperRun_failed;
	public static String PaperRun_noPrinter;
	public static String PaperRun_refused;
	public static String PaperRun_stop;
	public static String PaperRun_title;
	public static String PlaceRows_browse;
	public static String PlaceRows_folder;
	public static String PlaceRows_more;
	public static String PlaceRows_names;
	public static String PlaceRows_noFolder;
	public static String PrintAndCutDialog_blocked;
	public static String PrintAndCutDialog_caution;
	public static String PrintAndCutDialog_close;
	public static String PrintAndCutDialog_heading;
	public static String PrintAndCutDialog_jobTitle;
	public static String PrintAndCutDialog_message;
	public static String PrintAndCutDialog_noFormats;
	public static String PrintAndCutDialog_paperHeading;
	public static String PrintAndCutDialog_paperMessage;
	public static String PrintAndCutDialog_paperTitle;
	public static String PrintAndCutDialog_print;
	public static String PrintAndCutDialog_replace;
	public static String PrintAndCutDialog_replaces;
	public static String PrintAndCutDialog_title;
	public static String PrintAndCutDialog_working;
	public static String PrintAndCutDialog_write;
	public static String PrintPart_bleed;
	public static String PrintPart_bleedTip;
	public static String PrintPart_code;
	public static String PrintPart_codeTip;
	public static String PrintPart_knockOut;
	public static String PrintPart_knockOutTip;
	public static String PrintPart_measured;
	public static String PrintPart_noPrinter;
	public static String PrintPart_printer;
	public static String PrintPart_printerTip;
	public static String PrintPart_ruler;
	public static String PrintPart_rulerTip;
	public static String PrintPart_steps;
	public static String PrintPart_stepsTip;
	public static String PrintPart_turn;
	public static String PrintPart_turnHead;
	public static String PrintPart_turnSide;
	public static String PrintPart_turnTip;
	public static String ReadPrints_failed;
	public static String ReadPrints_name;
	public static String ReadPrints_noSize;
	public static String SheetsChosen_all;
	public static String SheetsChosen_bare;
	public static String SheetsChosen_numbers;
	public static String SheetsChosen_one;
	public static String SheetsChosen_sheets;
	public static String SheetsChosen_size;
	public static String SheetsChosen_sizeTip;
	public static String SheetsChosen_some;
	public static String WriteRun_cancelled;
	public static String WriteRun_done;
	public static String WriteRun_failed;
	public static String WriteRun_failedTitle;
	public static String WriteRun_name;
	public static String WriteRun_nothing;

	static {
		initializeMessages("org.frisket.ui.print.internal.output.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
