package org.frisket.ui.views.internal.makeready;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String MakereadyMenu_goThere;
	public static String MakereadyMenu_list;
	public static String MakereadyMenu_soon;
	public static String MakereadyView_allowed;
	public static String MakereadyView_byHand;
	public static String MakereadyView_checking;
	public static String MakereadyView_cure;
	public static String MakereadyView_element;
	public static String MakereadyView_emptyJob;
	public static String MakereadyView_finding;
	public static String MakereadyView_key;
	public static String MakereadyView_measured;
	public static String MakereadyView_noBench;
	public static String MakereadyView_noFindings;
	public static String MakereadyView_noLine;
	public static String MakereadyView_number;
	public static String MakereadyView_severity;
	public static String MakereadyView_soon;
	public static String MakereadyView_title;
	public static String MakereadyView_titleCount;

	static {
		initializeMessages("org.frisket.ui.views.internal.makeready.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
