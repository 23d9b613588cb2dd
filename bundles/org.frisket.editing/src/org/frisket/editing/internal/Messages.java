package org.frisket.editing.internal;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String Targets_combination;
	public static String Targets_element;
	public static String Targets_mat;
	public static String Targets_outline;
	public static String Targets_picture;
	public static String Targets_several;
	public static String Targets_weedLines;
	public static String Targets_wording;

	static {
		initializeMessages("org.frisket.editing.internal.messages", Messages.class);
	}

	private Messages() {
	}
}
