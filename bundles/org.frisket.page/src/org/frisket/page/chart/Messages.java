package org.frisket.page.chart;

import org.eclipse.osgi.util.NLS;

/** What stands on the pages of a chart, in the user's language. */
final class Messages extends NLS {

	public static String ChartFiles_ending;
	public static String ChartPages_capitals;
	public static String ChartPages_glyphs;
	public static String ChartPages_inch;
	public static String ChartPages_inchBar;
	public static String ChartPages_millimetre;
	public static String ChartPages_millimetreBar;
	public static String ChartPages_page;
	public static String ChartPages_smaller;

	static {
		initializeMessages("org.frisket.page.chart.messages", Messages.class);
	}

	private Messages() {
	}
}
