package org.frisket.export.drive;

import org.eclipse.osgi.util.NLS;

/** What is said here, in the user's language. */
final class Messages extends NLS {

	public static String Drive_notSettled;

	static {
		initializeMessages("org.frisket.export.drive.messages", Messages.class);
	}

	private Messages() {
	}
}
