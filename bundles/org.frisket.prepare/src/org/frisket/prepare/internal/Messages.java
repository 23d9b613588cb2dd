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
	public static String EdgeTrace_cure;
	public static String EdgeTrace_size;
	public static String EdgeTrace_sizeCure;
	public static String FontResolver_differs;
	public static String FontResolver_differsCure;
	public static String FontResolver_missing;
	public static String FontResolver_missingBecause;
	public static String FontResolver_missingCure;
	public static String FontResolver_none;
	public static String FontResolver_noneCure;
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
	public static String PictureStep_linked;
	public static String PictureStep_linkedCure;
	public static String PictureStep_missing;
	public static String PictureStep_missingCure;
	public static String PictureStep_unreadable;
	public static String WeedLinesStep_noMargin;
	public static String WeedLinesStep_noMarginCure;

	static {
		initializeMessages("org.frisket.prepare.internal.messages", Messages.class);
	}

	private Messages() {
	}
}
