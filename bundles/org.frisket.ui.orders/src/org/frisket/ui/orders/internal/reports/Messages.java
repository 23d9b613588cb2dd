package org.frisket.ui.orders.internal.reports;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ReportsView_choice;
	public static String ReportsView_notWritten;
	public static String ReportsView_reading;
	public static String ReportsView_writing;
	public static String ReportsView_written;

	static {
		initializeMessages("org.frisket.ui.orders.internal.reports.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
