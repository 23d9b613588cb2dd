package org.frisket.print.marks;

import org.eclipse.osgi.util.NLS;

/** Texts for people. */
final class Messages extends NLS {

	public static String FindReport_few;
	public static String FindReport_mirrored;
	public static String FindReport_mirroredCure;
	public static String FindReport_missing;
	public static String FindReport_missingCure;
	public static String FindReport_none;
	public static String FindReport_noneCure;
	public static String FindReport_outside;
	public static String FindReport_outsideCure;
	public static String FindReport_tilt;
	public static String FindReport_tiltCure;
	public static String FindReport_turned;
	public static String FindReport_turnedCure;
	public static String FindReport_upsideDown;
	public static String MarkCheck_fine;
	public static String MarkCheck_fineCure;
	public static String MarkCheck_margin;
	public static String MarkCheck_marginCure;
	public static String MarkCheck_mirrored;
	public static String MarkCheck_near;
	public static String MarkCheck_nearCure;
	public static String MarkCheck_symmetricCure;
	public static String MarkCheck_three;
	public static String MarkCheck_threeCure;
	public static String MarkCheck_turned;
	public static String MarkDesign_size;
	public static String MarkPlacement_noRoom;
	public static String MarkPlacement_noRoomForCode;
	public static String MarkPlan_count;
	public static String MarkPlan_sheet;

	static {
		initializeMessages("org.frisket.print.marks.messages", Messages.class);
	}

	private Messages() {
	}
}
