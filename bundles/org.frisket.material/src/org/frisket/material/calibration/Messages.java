package org.frisket.material.calibration;

import org.eclipse.osgi.util.NLS;

/** What is said of calibration, in the user's language. */
final class Messages extends NLS {

	public static String OffsetCalibration_few;
	public static String OffsetCalibration_noZero;
	public static String OffsetSheet_notes;
	public static String OffsetSheet_range;
	public static String OffsetSheet_title;
	public static String ScaleReading_far;
	public static String ScaleReading_positive;
	public static String ScaleSheet_notes;
	public static String ScaleSheet_size;
	public static String ScaleSheet_title;

	static {
		initializeMessages("org.frisket.material.calibration.messages", Messages.class);
	}

	private Messages() {
	}
}
