package org.frisket.run.play;

import org.eclipse.osgi.util.NLS;

/** What is said of a run, in the user's language. */
final class Messages extends NLS {

	public static String RunWords_change;
	public static String RunWords_hours;
	public static String RunWords_lift;
	public static String RunWords_lower;
	public static String RunWords_metres;
	public static String RunWords_minutes;
	public static String RunWords_noStop;
	public static String RunWords_oneStop;
	public static String RunWords_over;
	public static String RunWords_seconds;
	public static String RunWords_stops;
	public static String RunWords_stroke;
	public static String RunWords_travel;

	static {
		initializeMessages("org.frisket.run.play.messages", Messages.class);
	}

	private Messages() {
	}
}
