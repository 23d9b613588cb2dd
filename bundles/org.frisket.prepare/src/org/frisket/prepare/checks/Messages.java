package org.frisket.prepare.checks;

import org.eclipse.osgi.util.NLS;

/** What is wrong with a studio's limits, in the user's language. */
final class Messages extends NLS {

	public static String ShelfLimits_estimated;
	public static String ShelfLimits_measured;
	public static String ShelfLimits_unreadable;
	public static String StudioLimits_form;
	public static String StudioLimits_line;
	public static String StudioLimits_noLength;
	public static String StudioLimits_noLimit;
	public static String StudioLimits_noNumber;
	public static String StudioLimits_range;
	public static String StudioLimits_unreadable;

	static {
		initializeMessages("org.frisket.prepare.checks.messages", Messages.class);
	}

	private Messages() {
	}
}
