package org.frisket.prepare.internal.checks;

import org.eclipse.osgi.util.NLS;

/** What checks find and what helps, in the user's language. */
final class Messages extends NLS {

	public static String CornerCheck_sharp;
	public static String CornerCheck_sharpCure;
	public static String CrossingCheck_crossing;
	public static String CrossingCheck_crossingCure;
	public static String CrossingCheck_doubled;
	public static String CrossingCheck_doubledCure;
	public static String DoubleCutCheck_both;
	public static String DoubleCutCheck_bothCure;
	public static String DoubleCutCheck_drawn;
	public static String DoubleCutCheck_drawnCure;
	public static String DoubleCutCheck_twice;
	public static String DoubleCutCheck_twiceCure;
	public static String GapCheck_narrow;
	public static String GapCheck_narrowCure;
	public static String GapCheck_slit;
	public static String GapCheck_slitCure;
	public static String HoleCheck_small;
	public static String HoleCheck_smallCure;
	public static String IslandCheck_loose;
	public static String IslandCheck_looseCure;
	public static String NodeCheck_close;
	public static String NodeCheck_closeCure;
	public static String NodeCheck_many;
	public static String NodeCheck_manyCure;
	public static String OpenContourCheck_open;
	public static String OpenContourCheck_openCure;
	public static String OperationCheck_none;
	public static String OperationCheck_noneCure;
	public static String OverlapCheck_overlap;
	public static String OverlapCheck_overlapCure;
	public static String PenTextCheck_small;
	public static String PenTextCheck_smallCure;
	public static String PictureCheck_coarse;
	public static String PictureCheck_coarseCure;
	public static String PrintedEdgeCheck_bleed;
	public static String PrintedEdgeCheck_bleedCure;
	public static String PrintedEdgeCheck_near;
	public static String PrintedEdgeCheck_nearCure;
	public static String SheetCheck_large;
	public static String SheetCheck_largeCure;
	public static String SheetCheck_margin;
	public static String SmallPieceCheck_small;
	public static String SmallPieceCheck_smallCure;
	public static String StockCheck_missing;
	public static String StockCheck_missingCure;
	public static String StockCheck_unknown;
	public static String StockCheck_unknownCure;
	public static String ThinStrokeCheck_thin;
	public static String ThinStrokeCheck_thinCure;
	public static String VanishedCheck_gone;
	public static String VanishedCheck_goneCure;

	static {
		initializeMessages("org.frisket.prepare.internal.checks.messages", Messages.class);
	}

	private Messages() {
	}
}
