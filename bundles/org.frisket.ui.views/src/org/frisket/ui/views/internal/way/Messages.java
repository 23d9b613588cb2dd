package org.frisket.ui.views.internal.way;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Station_checking;
	public static String Station_makeready;
	public static String Station_mats;
	public static String Station_matCount;
	public static String Station_noMats;
	public static String Station_noOutlines;
	public static String Station_noSheets;
	public static String Station_noWording;
	public static String Station_oneMat;
	public static String Station_onePiece;
	public static String Station_oneSheet;
	public static String Station_oneWording;
	public static String Station_outlines;
	public static String Station_pieces;
	public static String Station_sheetCount;
	public static String Station_sheets;
	public static String Station_sheetsTip;
	public static String Station_wording;
	public static String Station_wordings;
	public static String Station_working;
	public static String Station_wordingTip;
	public static String Station_outlinesTip;
	public static String Station_matsTip;
	public static String Station_makereadyTip;
	public static String WayStrip_longest;
	public static String WayStrip_longestSheets;
	public static String WayStrip_name;
	public static String WayStrip_spoken;
	public static String Station_handOff;
	public static String Station_handOffTip;
	public static String Station_notYet;
	public static String Station_run;
	public static String Station_runTip;
	public static String WayStrip_longestFile;
	public static String WayStrip_longestRun;

	static {
		initializeMessages("org.frisket.ui.views.internal.way.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
