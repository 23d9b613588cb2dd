package org.frisket.ui.views.internal.fonts;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String FontField_missing;
	public static String FontList_name;
	public static String FontList_spoken;
	public static String FontPopup_byFitness;
	public static String FontPopup_byName;
	public static String FontPopup_byXHeight;
	public static String FontPopup_filter;
	public static String FontPopup_order;
	public static String FontPopup_waiting;
	public static String FontSamples_job;
	public static String FontVerdicts_job;

	static {
		initializeMessages("org.frisket.ui.views.internal.fonts.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
