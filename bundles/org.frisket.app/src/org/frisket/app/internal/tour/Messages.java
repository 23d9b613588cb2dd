package org.frisket.app.internal.tour;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Callout_back;
	public static String Callout_done;
	public static String Callout_end;
	public static String Callout_next;
	public static String Callout_step;
	public static String TourOffer_notNow;
	public static String TourOffer_show;
	public static String TourOffer_text;
	public static String TourStep_export;
	public static String TourStep_exportTitle;
	public static String TourStep_makeready;
	public static String TourStep_makereadyTitle;
	public static String TourStep_mats;
	public static String TourStep_matsTitle;
	public static String TourStep_properties;
	public static String TourStep_propertiesTitle;
	public static String TourStep_wording;
	public static String TourStep_wordingTitle;

	static {
		initializeMessages("org.frisket.app.internal.tour.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
