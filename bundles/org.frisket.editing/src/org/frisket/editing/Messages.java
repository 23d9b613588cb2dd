package org.frisket.editing;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String ReloadJob_merged;
	public static String ReloadJob_name;
	public static String ReloadJob_taken;

	static {
		initializeMessages("org.frisket.editing.messages", Messages.class);
	}

	private Messages() {
	}
}
