package org.frisket.prepare;

import org.eclipse.osgi.util.NLS;

/** What is said when a check fails, of fonts and of pictures, in the user's language. */
final class Messages extends NLS {

	public static String Figures_point;
	public static String Gathering_more;
	public static String JobPreparer_penCut;
	public static String JobPreparer_penCutCure;
	public static String JobPreparer_pictureWorked;
	public static String JobPreparer_pictureWorkedCure;
	public static String Makeready_failed;
	public static String Makeready_failedCure;
	public static String Makeready_limitsCure;

	static {
		initializeMessages("org.frisket.prepare.messages", Messages.class);
	}

	private Messages() {
	}
}
