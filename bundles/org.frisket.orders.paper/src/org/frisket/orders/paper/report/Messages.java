package org.frisket.orders.paper.report;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ReportChart_day;
	public static String ReportChart_last;
	public static String ReportChart_nothing;
	public static String ReportPaper_table;

	static {
		initializeMessages("org.frisket.orders.paper.report.messages", Messages.class);
	}

	private Messages() {
	}
}
