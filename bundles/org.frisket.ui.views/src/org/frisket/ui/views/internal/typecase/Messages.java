package org.frisket.ui.views.internal.typecase;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String CaseBar_all;
	public static String CaseBar_characters;
	public static String CaseBar_font;
	public static String CaseBar_lone;
	public static String CaseBar_ornaments;
	public static String CaseBar_search;
	public static String CaseBar_searchTip;
	public static String CaseBar_stop;
	public static String CaseFoot_count;
	public static String CaseFoot_one;
	public static String CaseFoot_size;
	public static String CasePopup_anyScript;
	public static String CasePopup_broken;
	public static String CasePopup_characters;
	public static String CasePopup_count;
	public static String CasePopup_countBroken;
	public static String CasePopup_name;
	public static String CasePopup_reading;
	public static String CasePopup_sample;
	public static String ChartJob_cancelled;
	public static String ChartJob_failed;
	public static String ChartJob_name;
	public static String ChartJob_written;
	public static String ChartJob_writtenSeveral;
	public static String FontShelf_job;
	public static String GlyphGrid_name;
	public static String GlyphPictures_job;
	public static String GlyphWords_character;
	public static String GlyphWords_lone;
	public static String GlyphWords_number;
	public static String OpenCase_job;
	public static String Placer_blank;
	public static String Placer_job;
	public static String Placer_layer;
	public static String Placer_noBench;
	public static String Placer_outline;
	public static String Placer_typed;
	public static String Placer_wording;
	public static String PrintChartHandler_pdf;
	public static String PrintChartHandler_png;
	public static String PrintChartHandler_title;
	public static String TypeCaseView_ending;
	public static String TypeCaseView_noFonts;
	public static String TypeCaseView_noneFound;
	public static String TypeCaseView_noneOfKind;
	public static String TypeCaseView_reading;

	static {
		initializeMessages("org.frisket.ui.views.internal.typecase.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
