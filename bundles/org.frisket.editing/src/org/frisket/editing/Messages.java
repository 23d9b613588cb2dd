package org.frisket.editing;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddElement_name;
	public static String AddGuide_name;
	public static String AddLayer_name;
	public static String AddMatBehind_one;
	public static String AddMatBehind_several;
	public static String AlignElements_name;
	public static String ChangeFlow_arc;
	public static String ChangeFlow_arcAngle;
	public static String ChangeFlow_arcHeads;
	public static String ChangeFlow_arcRadius;
	public static String ChangeFlow_arcSide;
	public static String ChangeFlow_box;
	public static String ChangeFlow_flow;
	public static String ChangeFlow_path;
	public static String ChangeFlow_pathHanging;
	public static String ChangeFlow_pathReversed;
	public static String ChangeFlow_pathStart;
	public static String ChangeHold_addBar;
	public static String ChangeHold_barKind;
	public static String ChangeHold_barOffset;
	public static String ChangeHold_barOverhang;
	public static String ChangeHold_barThickness;
	public static String ChangeHold_removeBar;
	public static String ChangeHold_tieWidth;
	public static String ChangeHold_ties;
	public static String ChangeBridges_add;
	public static String ChangeBridges_byRule;
	public static String ChangeBridges_count;
	public static String ChangeBridges_move;
	public static String ChangeBridges_remove;
	public static String ChangeBridges_stencil;
	public static String ChangeBridges_width;
	public static String ChangeMat_corners;
	public static String ChangeMat_distance;
	public static String ChangeMat_holes;
	public static String ChangeMat_mitreLimit;
	public static String ChangeMat_smoothing;
	public static String ChangeOperation_add;
	public static String ChangeOperation_kind;
	public static String ChangeOperation_order;
	public static String ChangeOperation_passes;
	public static String ChangeOperation_remove;
	public static String ChangeOperation_tool;
	public static String ChangePath_add;
	public static String ChangePath_addOne;
	public static String ChangePath_break;
	public static String ChangePath_breakOne;
	public static String ChangePath_close;
	public static String ChangePath_corner;
	public static String ChangePath_cornerOne;
	public static String ChangePath_curves;
	public static String ChangePath_delete;
	public static String ChangePath_deleteOne;
	public static String ChangePath_handle;
	public static String ChangePath_join;
	public static String ChangePath_joinOne;
	public static String ChangePath_lines;
	public static String ChangePath_move;
	public static String ChangePath_moveOne;
	public static String ChangePath_reverse;
	public static String ChangePath_segment;
	public static String ChangePath_smooth;
	public static String ChangePath_smoothOne;
	public static String ChangePath_symmetric;
	public static String ChangePath_symmetricOne;
	public static String ChangePen_hatchAngle;
	public static String ChangePen_hatchInset;
	public static String ChangePen_hatchSpacing;
	public static String ChangePen_style;
	public static String ChangeSpan_features;
	public static String ChangeSpan_font;
	public static String ChangeSpan_height;
	public static String ChangeWording_alignment;
	public static String ChangeWording_axes;
	public static String ChangeWording_embolden;
	public static String ChangeWording_features;
	public static String ChangeWording_font;
	public static String ChangeWording_height;
	public static String ChangeWording_join;
	public static String ChangeWording_kerning;
	public static String ChangeWording_ligatures;
	public static String ChangeWording_lineSpacing;
	public static String ChangeWording_measure;
	public static String ChangeWording_part;
	public static String ChangeWording_text;
	public static String ChangeWording_tracking;
	public static String ChangeWording_wordSpacing;
	public static String DeleteElements_name;
	public static String DistributeElements_name;
	public static String DuplicateElements_name;
	public static String DuplicateLayer_name;
	public static String GroupElements_name;
	public static String MakeOutline_name;
	public static String MoveElements_name;
	public static String MoveGuide_name;
	public static String MoveLayer_name;
	public static String NudgeLetters_back;
	public static String NudgeLetters_backOne;
	public static String NudgeLetters_move;
	public static String NudgeLetters_moveOne;
	public static String NudgeLetters_scale;
	public static String NudgeLetters_scaleOne;
	public static String NudgeLetters_turn;
	public static String NudgeLetters_turnOne;
	public static String PasteElements_name;
	public static String RemoveGuide_name;
	public static String RemoveLayer_name;
	public static String ReloadJob_name;
	public static String RemoveMat_name;
	public static String RenameElements_name;
	public static String RenameGroup_name;
	public static String RenameLayer_name;
	public static String ReorderElements_backward;
	public static String ReorderElements_bottom;
	public static String ReorderElements_forward;
	public static String ReorderElements_front;
	public static String RestackElements_name;
	public static String SetElements_hide;
	public static String SetElements_lock;
	public static String SetElements_show;
	public static String SetElements_unlock;
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
	public static String StandMatBehind_elements;
	public static String StandMatBehind_outOfRing;
	public static String Targets_element;
	public static String Targets_mat;
	public static String Targets_outline;
	public static String Targets_several;
	public static String Targets_wording;
	public static String TransformElements_mirror;
	public static String TransformElements_rotate;
	public static String TransformElements_scale;
	public static String TypeWording_new;
	public static String UngroupElements_name;

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
