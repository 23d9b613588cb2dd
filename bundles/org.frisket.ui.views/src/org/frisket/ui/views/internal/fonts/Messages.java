package org.frisket.ui.views.internal.fonts;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String FontField_missing;
	public static String FontList_name;
	public static String FontPopup_filter;
	public static String FontSamples_job;

	static {
		initializeMessages("org.frisket.ui.views.internal.fonts.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
