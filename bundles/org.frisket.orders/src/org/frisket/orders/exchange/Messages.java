package org.frisket.orders.exchange;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String TicketMedium_measure;

	static {
		initializeMessages("org.frisket.orders.exchange.messages", Messages.class);
	}

	private Messages() {
	}
}
