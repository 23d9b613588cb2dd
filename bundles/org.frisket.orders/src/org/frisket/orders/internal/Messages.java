package org.frisket.orders.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String KeptJobs_alreadyThere;
	public static String KeptJobs_damaged;
	public static String KeptJobs_noJob;
	public static String Unreadable_word;

	static {
		initializeMessages("org.frisket.orders.internal.messages", Messages.class);
	}

	private Messages() {
	}
}
