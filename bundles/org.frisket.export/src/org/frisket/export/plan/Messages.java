package org.frisket.export.plan;

import org.eclipse.osgi.util.NLS;

/** What is said here, in the user's language. */
final class Messages extends NLS {

	public static String Destination_oneFile;
	public static String SheetChoice_backwards;
	public static String SheetChoice_form;
	public static String SheetChoice_noSheets;
	public static String SheetChoice_noSuch;
	public static String StudioWorkshop_noMachine;

	static {
		initializeMessages("org.frisket.export.plan.messages", Messages.class);
	}

	private Messages() {
	}
}
