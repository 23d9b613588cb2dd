package org.frisket.prepare.internal;

import org.eclipse.osgi.util.NLS;

/** What is wrong with artwork and what helps, in the user's language. */
final class Messages extends NLS {

	public static String CombinationStep_empty;
	public static String CombinationStep_emptyCure;
	public static String CombinationStep_noLine;
	public static String CombinationStep_noLineCure;
	public static String CombinationStep_ofItself;
	public static String CombinationStep_ofItselfCure;
	public static String FontResolver_differs;
	public static String FontResolver_differsCure;
	public static String FontResolver_missing;
	public static String FontResolver_missingBecause;
	public static String FontResolver_missingCure;
	public static String FontResolver_none;
	public static String FontResolver_noneCure;
	public static String HandBridges_idleCure;
	public static String HandBridges_loose;
	public static String HandBridges_looseCure;
	public static String HandBridges_missed;
	public static String HandBridges_missedCure;
	public static String HandBridges_noGap;
	public static String HandBridges_noLetter;
	public static String HandBridges_noWidth;
	public static String HandBridges_noWidthCure;
	public static String MatStep_behindItself;
	public static String MatStep_behindItselfCure;
	public static String MatStep_vanished;
	public static String MatStep_vanishedCure;
	public static String OutlineStep_unreadable;
	public static String OutlineStep_unreadableCure;
	public static String PictureStep_again;
	public static String PictureStep_damaged;
	public static String PictureStep_flat;
	public static String PictureStep_flatCure;
	public static String PictureStep_unreadable;
	public static String WeedLinesStep_noMargin;
	public static String WeedLinesStep_noMarginCure;
	public static String WordingStep_loose;
	public static String WordingStep_looseCure;
	public static String WordingStep_missing;
	public static String WordingStep_missingCure;

	static {
		initializeMessages("org.frisket.prepare.internal.messages", Messages.class);
	}

	private Messages() {
	}
}
