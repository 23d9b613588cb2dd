package org.frisket.ui.orders.internal.place;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String MasterPasswordDialog_again;
	public static String MasterPasswordDialog_asked;
	public static String MasterPasswordDialog_doNotKeep;
	public static String MasterPasswordDialog_lock;
	public static String MasterPasswordDialog_new;
	public static String MasterPasswordDialog_title;
	public static String MasterPasswordDialog_unlock;
	public static String MasterPasswordDialog_word;
	public static String MasterPasswordDialog_wrong;
	public static String OrderBookPage_backUp;
	public static String OrderBookPage_chosen;
	public static String OrderBookPage_copy;
	public static String OrderBookPage_database;
	public static String OrderBookPage_folder;
	public static String OrderBookPage_keep;
	public static String OrderBookPage_onServer;
	public static String OrderBookPage_password;
	public static String OrderBookPage_passwordHint;
	public static String OrderBookPage_restore;
	public static String OrderBookPage_server;
	public static String OrderBookPage_serverHint;
	public static String OrderBookPage_stays;
	public static String OrderBookPage_try;
	public static String OrderBookPage_trying;
	public static String OrderBookPage_user;
	public static String OrderBookPage_whole;
	public static String PersonPage_name;
	public static String PersonPage_note;
	public static String Place_changing;
	public static String Place_works;
	public static String Place_worksEmpty;
	public static String ServerAddress_database;
	public static String ServerAddress_server;
	public static String ServerAddress_user;

	static {
		initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
