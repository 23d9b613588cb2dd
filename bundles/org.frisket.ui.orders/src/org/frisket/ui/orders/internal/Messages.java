package org.frisket.ui.orders.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String OrderDesk_reading;

	static {
		initializeMessages("org.frisket.ui.orders.internal.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
