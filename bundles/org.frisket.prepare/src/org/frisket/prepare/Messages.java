package org.frisket.prepare;

import org.eclipse.osgi.util.NLS;

/** What is said when a check fails, in the user's language. */
final class Messages extends NLS {

	public static String Makeready_failed;
	public static String Makeready_failedCure;

	static {
		initializeMessages("org.frisket.prepare.messages", Messages.class);
	}

	private Messages() {
	}
}
