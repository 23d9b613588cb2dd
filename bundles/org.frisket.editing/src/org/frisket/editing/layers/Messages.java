package org.frisket.editing.layers;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddLayer_name;
	public static String DuplicateLayer_name;
	public static String MoveLayer_name;
	public static String RemoveLayer_name;
	public static String RenameLayer_name;
	public static String RestackElements_name;
	public static String SetLayerColour_name;
	public static String LayApart_name;
	public static String SetLayerStock_name;
	public static String SetLayers_hide;
	public static String SetLayers_hideOne;
	public static String SetLayers_lock;
	public static String SetLayers_lockOne;
	public static String SetLayers_show;
	public static String SetLayers_showOne;
	public static String SetLayers_unlock;
	public static String SetLayers_unlockOne;

	static {
		initializeMessages("org.frisket.editing.layers.messages", Messages.class);
	}

	private Messages() {
	}
}
