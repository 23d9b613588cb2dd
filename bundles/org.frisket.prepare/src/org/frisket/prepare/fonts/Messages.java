package org.frisket.prepare.fonts;

import org.eclipse.osgi.util.NLS;

/** What is said when a check fails, of fonts and of pictures, in the user's language. */
final class Messages extends NLS {

	public static String FontVerdict_cuts;
	public static String FontVerdict_drawOnly;
	public static String FontVerdict_editable;
	public static String FontVerdict_facts;
	public static String FontVerdict_factsOfOne;
	public static String FontVerdict_installable;
	public static String FontVerdict_lacks;
	public static String FontVerdict_noLicence;
	public static String FontVerdict_notBelow;
	public static String FontVerdict_nothing;
	public static String FontVerdict_piece;
	public static String FontVerdict_previewAndPrint;
	public static String FontVerdict_restricted;
	public static String FontVerdict_stroke;
	public static String FontVerdict_unreadable;
	public static String FontVerdict_xHeight;

	static {
		initializeMessages("org.frisket.prepare.fonts.messages", Messages.class);
	}

	private Messages() {
	}
}
