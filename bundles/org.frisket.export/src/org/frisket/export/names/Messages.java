package org.frisket.export.names;

import org.eclipse.osgi.util.NLS;

/** What is said here, in the user's language. */
final class Messages extends NLS {

	public static String NamePattern_close;
	public static String NamePattern_empty;
	public static String NamePattern_forbidden;
	public static String NamePattern_long;
	public static String NamePattern_noField;
	public static String NamePattern_nothing;
	public static String NamePattern_open;
	public static String NamePattern_wrong;
	public static String SheetNames_noSheet;
	public static String SheetNames_same;

	static {
		initializeMessages("org.frisket.export.names.messages", Messages.class);
	}

	private Messages() {
	}
}
