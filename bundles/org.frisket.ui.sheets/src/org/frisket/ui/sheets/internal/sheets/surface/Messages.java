package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String MoveFeedback_near;
	public static String MoveFeedback_overlaps;
	public static String SheetFlags_finding;
	public static String SheetFlags_measured;

	static {
		initializeMessages("org.frisket.ui.sheets.internal.sheets.surface.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
