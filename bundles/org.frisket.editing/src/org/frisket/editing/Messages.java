package org.frisket.editing;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddElement_name;
	public static String AddMatBehind_one;
	public static String AddMatBehind_several;
	public static String AlignElements_name;
	public static String ChangeMat_corners;
	public static String ChangeMat_distance;
	public static String ChangeMat_holes;
	public static String ChangeMat_mitreLimit;
	public static String ChangeMat_smoothing;
	public static String ChangeOperation_kind;
	public static String ChangeOperation_passes;
	public static String ChangeOperation_tool;
	public static String ChangeWording_alignment;
	public static String ChangeWording_font;
	public static String ChangeWording_height;
	public static String ChangeWording_join;
	public static String ChangeWording_kerning;
	public static String ChangeWording_ligatures;
	public static String ChangeWording_lineSpacing;
	public static String ChangeWording_part;
	public static String ChangeWording_text;
	public static String ChangeWording_tracking;
	public static String DeleteElements_name;
	public static String DistributeElements_name;
	public static String DuplicateElements_name;
	public static String MoveElements_name;
	public static String MoveLayer_name;
	public static String PasteElements_name;
	public static String RemoveMat_name;
	public static String RenameLayer_name;
	public static String ReorderElements_backward;
	public static String ReorderElements_bottom;
	public static String ReorderElements_forward;
	public static String ReorderElements_front;
	public static String SetLayerColour_name;
	public static String SetLayers_hide;
	public static String SetLayers_hideOne;
	public static String SetLayers_lock;
	public static String SetLayers_lockOne;
	public static String SetLayers_show;
	public static String SetLayers_showOne;
	public static String SetLayers_unlock;
	public static String SetLayers_unlockOne;
	public static String Targets_element;
	public static String Targets_mat;
	public static String Targets_outline;
	public static String Targets_several;
	public static String Targets_wording;
	public static String TransformElements_mirror;
	public static String TransformElements_rotate;
	public static String TransformElements_scale;
	public static String TypeWording_new;

	static {
		initializeMessages("org.frisket.editing.messages", Messages.class);
	}

	private Messages() {
	}

	/** A name with what it is about in it. */
	static String named(String name, Object about) {
		return NLS.bind(name, about);
	}
}
