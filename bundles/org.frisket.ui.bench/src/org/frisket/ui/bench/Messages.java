package org.frisket.ui.bench;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String RecentJobsMenu_item;
	public static String RecentJobsMenu_itemPlain;
	public static String RecentJobsMenu_none;

	static {
		initializeMessages("org.frisket.ui.bench.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
