package org.frisket.prepare.internal.wording;

import org.eclipse.osgi.util.NLS;

/** What is wrong with artwork and what helps, in the user's language. */
final class Messages extends NLS {

	public static String HandBridges_idleCure;
	public static String HandBridges_loose;
	public static String HandBridges_looseCure;
	public static String HandBridges_missed;
	public static String HandBridges_missedCure;
	public static String HandBridges_noGap;
	public static String HandBridges_noLetter;
	public static String HandBridges_noWidth;
	public static String HandBridges_noWidthCure;
	public static String LetterBody_noRoom;
	public static String LetterBody_noRoomCure;
	public static String LetterBody_stacked;
	public static String LetterBody_stackedCure;
	public static String LetterBody_vanished;
	public static String LetterBody_vanishedCure;
	public static String PenLines_fine;
	public static String PenLines_fineCure;
	public static String WordingSource_axes;
	public static String WordingSource_axesCure;
	public static String WordingSource_features;
	public static String WordingSource_featuresCure;
	public static String WordingSource_noPath;
	public static String WordingSource_noPathCure;
	public static String WordingSource_scale;
	public static String WordingSource_scaleCure;
	public static String WordingSource_span;
	public static String WordingSource_spanCure;
	public static String WordingStep_loose;
	public static String WordingStep_looseCure;
	public static String WordingStep_missing;
	public static String WordingStep_missingCure;
	public static String WordingText_arc;
	public static String WordingText_arcCure;
	public static String WordingText_beyond;
	public static String WordingText_box;
	public static String WordingText_boxCure;
	public static String WordingText_long;
	public static String WordingText_longCure;

	static {
		initializeMessages("org.frisket.prepare.internal.wording.messages", Messages.class);
	}

	private Messages() {
	}
}
