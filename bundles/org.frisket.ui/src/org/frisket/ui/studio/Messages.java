package org.frisket.ui.studio;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String StoreWatch_name;

	static {
		NLS.initializeMessages(Messages.class.getPackageName() + ".messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
