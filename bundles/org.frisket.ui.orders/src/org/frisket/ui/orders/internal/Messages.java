package org.frisket.ui.orders.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String OpenJob_cannot;
	public static String OrderDesk_reading;
	public static String Words_cancel;
	public static String Words_close;

	static {
		initializeMessages("org.frisket.ui.orders.internal.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
