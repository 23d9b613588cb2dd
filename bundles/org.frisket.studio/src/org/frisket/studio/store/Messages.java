package org.frisket.studio.store;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Databases_broken;
	public static String Databases_password;
	public static String Databases_unknown;
	public static String Server_full;
	public static String Server_lost;
	public static String Server_noDatabase;
	public static String Server_noRight;
	public static String Server_stranger;
	public static String Server_unsure;
	public static String StoreException_unusable;
	public static String Store_character;
	public static String Store_damaged;
	public static String Store_failed;
	public static String Store_full;
	public static String Store_inUse;
	public static String Store_migration;
	public static String Store_newer;
	public static String Store_older;
	public static String Store_readOnly;
	public static String Store_semicolon;
	public static String Store_setBack;

	static {
		initializeMessages("org.frisket.studio.store.messages", Messages.class);
	}

	private Messages() {
	}
}
