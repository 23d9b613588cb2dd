package org.frisket.ui.views.internal.properties.wording;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AxisRows_axis;
	public static String AxisRows_instance;
	public static String AxisRows_own;
	public static String AxisRows_range;
	public static String BarRows_add;
	public static String BarRows_addTip;
	public static String BarRows_baseline;
	public static String BarRows_frame;
	public static String BarRows_kind;
	public static String BarRows_offset;
	public static String BarRows_offsetFrameTip;
	public static String BarRows_offsetTip;
	public static String BarRows_overhang;
	public static String BarRows_overhangTip;
	public static String BarRows_remove;
	public static String BarRows_removeTip;
	public static String BarRows_thickness;
	public static String BarRows_underline;
	public static String HoldForm_between;
	public static String HoldForm_betweenTip;
	public static String FeatureTick_form;
	public static String FeatureTick_off;
	public static String FeatureTick_on;
	public static String FeatureTick_tip;
	public static String FeatureTick_usual;
	public static String Field_several;
	public static String FlowForm_angle;
	public static String FlowForm_angleTip;
	public static String FlowForm_arc;
	public static String FlowForm_boxHeight;
	public static String FlowForm_boxNone;
	public static String FlowForm_boxTip;
	public static String FlowForm_boxWidth;
	public static String FlowForm_flow;
	public static String FlowForm_hanging;
	public static String FlowForm_inside;
	public static String FlowForm_inward;
	public static String FlowForm_noOutline;
	public static String FlowForm_outline;
	public static String FlowForm_outlineAt;
	public static String FlowForm_path;
	public static String FlowForm_pick;
	public static String FlowForm_pickPrompt;
	public static String FlowForm_pickTip;
	public static String FlowForm_radius;
	public static String FlowForm_reversed;
	public static String FlowForm_stacked;
	public static String FlowForm_start;
	public static String FlowForm_straight;
	public static String FlowForm_title;
	public static String FontFamilies_list;
	public static String FontFamilies_open;
	public static String HoldForm_bridges;
	public static String HoldForm_bridgesNone;
	public static String HoldForm_bridgesTip;
	public static String HoldForm_tieWidth;
	public static String HoldForm_ties;
	public static String HoldForm_title;
	public static String LetterformForm_embolden;
	public static String LetterformForm_emboldenTip;
	public static String LetterformForm_feature;
	public static String LetterformForm_key;
	public static String LetterformForm_none;
	public static String LetterformForm_tags;
	public static String LetterformForm_tagsNone;
	public static String LetterformForm_tagsTip;
	public static String LetterformForm_tagsWrong;
	public static String LetterformForm_title;
	public static String OperationForm_some;
	public static String PenForm_angle;
	public static String PenForm_centreline;
	public static String PenForm_hatched;
	public static String PenForm_inset;
	public static String PenForm_insetTip;
	public static String PenForm_outline;
	public static String PenForm_spacing;
	public static String PenForm_style;
	public static String PenForm_title;
	public static String SpacingForm_measure;
	public static String SpacingForm_measureNone;
	public static String SpacingForm_measureTip;
	public static String SpacingForm_title;
	public static String SpacingForm_words;
	public static String SpacingForm_wordsTip;
	public static String WordingForm_alignment;
	public static String WordingForm_asRest;
	public static String WordingForm_asRestTip;
	public static String WordingForm_centre;
	public static String WordingForm_font;
	public static String WordingForm_height;
	public static String WordingForm_joined;
	public static String WordingForm_justified;
	public static String WordingForm_kerning;
	public static String WordingForm_left;
	public static String WordingForm_ligatures;
	public static String WordingForm_lineSpacing;
	public static String WordingForm_right;
	public static String WordingForm_sample;
	public static String WordingForm_style;
	public static String WordingForm_text;
	public static String WordingForm_textTip;
	public static String WordingForm_textTooLong;
	public static String WordingForm_title;
	public static String WordingForm_touch;
	public static String WordingForm_tracking;

	static {
		initializeMessages("org.frisket.ui.views.internal.properties.wording.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
