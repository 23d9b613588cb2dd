package org.frisket.editing.wording;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

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
	public static String NudgeLetters_back;
	public static String NudgeLetters_backOne;
	public static String NudgeLetters_move;
	public static String NudgeLetters_moveOne;
	public static String NudgeLetters_scale;
	public static String NudgeLetters_scaleOne;
	public static String NudgeLetters_turn;
	public static String NudgeLetters_turnOne;
	public static String RepeatForLines_name;
	public static String TypeWording_new;

	static {
		initializeMessages("org.frisket.editing.wording.messages", Messages.class);
	}

	private Messages() {
	}
}
