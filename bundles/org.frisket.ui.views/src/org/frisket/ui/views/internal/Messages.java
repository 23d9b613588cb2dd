package org.frisket.ui.views.internal;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ElementText_exclude;
	public static String ElementText_intersect;
	public static String ElementText_left;
	public static String ElementText_mat;
	public static String ElementText_outline;
	public static String ElementText_right;
	public static String ElementText_subtract;
	public static String ElementText_unite;
	public static String ElementText_picture;
	public static String ElementText_unknown;
	public static String ElementText_weedLines;
	public static String ElementText_wording;
	public static String ElementText_wordingEmpty;
	public static String SeverityText_blocking;
	public static String SeverityText_blockingCount;
	public static String SeverityText_caution;
	public static String SeverityText_cautionCount;
	public static String SeverityText_none;
	public static String SeverityText_note;
	public static String SeverityText_noteCount;
	public static String SeverityText_oneBlocking;
	public static String SeverityText_oneCaution;
	public static String SeverityText_oneNote;

	static {
		initializeMessages("org.frisket.ui.views.internal.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
