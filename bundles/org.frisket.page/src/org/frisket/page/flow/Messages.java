package org.frisket.page.flow;

import org.eclipse.osgi.util.NLS;

/** What stands on every kind of page, in the user's language. */
final class Messages extends NLS {

	public static String Figures_inch;
	public static String Figures_inches;
	public static String Figures_metre;
	public static String Figures_millimetre;
	public static String Figures_millimetres;
	public static String Figures_minutes;
	public static String FlowedPages_page;
	public static String ScaleBar_bar;

	static {
		initializeMessages("org.frisket.page.flow.messages", Messages.class);
	}

	private Messages() {
	}
}
