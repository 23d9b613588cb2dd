package org.frisket.orders.work.backup;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StudioBackup_kept;

	static {
		initializeMessages("org.frisket.orders.work.backup.messages", Messages.class);
	}

	private Messages() {
	}
}
