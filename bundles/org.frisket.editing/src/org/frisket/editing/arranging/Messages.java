package org.frisket.editing.arranging;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddGuide_name;
	public static String AlignElements_name;
	public static String DistributeElements_name;
	public static String MoveElements_name;
	public static String MoveGuide_name;
	public static String RemoveGuide_name;
	public static String TransformElements_mirror;
	public static String TransformElements_rotate;
	public static String TransformElements_scale;

	static {
		initializeMessages("org.frisket.editing.arranging.messages", Messages.class);
	}

	private Messages() {
	}
}
