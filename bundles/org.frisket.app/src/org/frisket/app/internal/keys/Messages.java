package org.frisket.app.internal.keys;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String KeyListDialog_close;
	public static String KeyListDialog_command;
	public static String KeyListDialog_count;
	public static String KeyListDialog_keys;
	public static String KeyListDialog_search;
	public static String KeyListDialog_title;
	public static String KeyListDialog_where;

	static {
		initializeMessages("org.frisket.app.internal.keys.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
