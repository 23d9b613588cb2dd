package org.frisket.editing.shapes;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddMatBehind_one;
	public static String AddMatBehind_several;
	public static String AddWeedLines_name;
	public static String ChangeCombination_parts;
	public static String ChangeCombination_rule;
	public static String ChangeMat_corners;
	public static String ChangeMat_distance;
	public static String ChangeMat_form;
	public static String ChangeMat_frame;
	public static String ChangeMat_frameMargin;
	public static String ChangeMat_frameWidth;
	public static String ChangeMat_holes;
	public static String ChangeMat_mitreLimit;
	public static String ChangeMat_reach;
	public static String ChangeMat_shadow;
	public static String ChangeMat_smallestHole;
	public static String ChangeMat_smoothing;
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
	public static String ChangePicture_backdrop;
	public static String ChangePicture_bleed;
	public static String ChangePicture_bleedKind;
	public static String ChangePicture_border;
	public static String ChangePicture_colour;
	public static String ChangePicture_difference;
	public static String ChangePicture_edge;
	public static String ChangePicture_holes;
	public static String ChangePicture_keep;
	public static String ChangePicture_noEdge;
	public static String ChangePicture_replace;
	public static String ChangePicture_shadow;
	public static String ChangePicture_smoothing;
	public static String ChangePicture_specks;
	public static String ChangePicture_whole;
	public static String ChangeWeedLines_around;
	public static String ChangeWeedLines_between;
	public static String ChangeWeedLines_clearance;
	public static String ChangeWeedLines_margin;
	public static String ChangeWeedLines_spacing;
	public static String CombineElements_exclude;
	public static String CombineElements_intersect;
	public static String CombineElements_split;
	public static String CombineElements_subtract;
	public static String CombineElements_unite;
	public static String EdgeAsOutline_name;
	public static String MakeOutline_name;
	public static String RemoveMat_name;
	public static String RoundCorners_name;
	public static String StandMatBehind_elements;
	public static String StandMatBehind_outOfRing;

	static {
		initializeMessages("org.frisket.editing.shapes.messages", Messages.class);
	}

	private Messages() {
	}
}
