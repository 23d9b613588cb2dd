package org.frisket.ui.views.internal.properties;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String AngleField_form;
	public static String AngleField_text;
	public static String AngleField_unit;
	public static String ElementForm_locked;
	public static String ElementForm_name;
	public static String ElementForm_title;
	public static String ElementForm_unnamed;
	public static String ElementForm_visible;
	public static String Field_several;
	public static String FontFamilies_list;
	public static String FontFamilies_open;
	public static String LengthField_divisor;
	public static String LengthField_form;
	public static String LengthField_text;
	public static String LengthField_tooLarge;
	public static String LengthField_tooSmall;
	public static String LengthField_unit;
	public static String MatForm_add;
	public static String MatForm_bevel;
	public static String MatForm_corners;
	public static String MatForm_distance;
	public static String MatForm_fillHoles;
	public static String MatForm_holes;
	public static String MatForm_keepHoles;
	public static String MatForm_layer;
	public static String MatForm_mitre;
	public static String MatForm_mitreLimit;
	public static String MatForm_mitreLimitTip;
	public static String MatForm_remove;
	public static String MatForm_removeTip;
	public static String MatForm_round;
	public static String MatForm_smoothing;
	public static String MatForm_title;
	public static String NumberField_form;
	public static String NumberField_range;
	public static String NumberField_whole;
	public static String OperationForm_add;
	public static String OperationForm_addTip;
	public static String OperationForm_earlier;
	public static String OperationForm_earlierTip;
	public static String OperationForm_kind;
	public static String OperationForm_passes;
	public static String OperationForm_remove;
	public static String OperationForm_removeTip;
	public static String OperationForm_some;
	public static String OperationForm_title;
	public static String OperationForm_tool;
	public static String OperationForm_toolOpen;
	public static String PlaceForm_flat;
	public static String PlaceForm_height;
	public static String PlaceForm_left;
	public static String PlaceForm_nothing;
	public static String PlaceForm_proportional;
	public static String PlaceForm_title;
	public static String PlaceForm_top;
	public static String PlaceForm_turn;
	public static String PlaceForm_width;
	public static String PropertiesView_noBench;
	public static String PropertiesView_nothing;
	public static String PropertiesView_several;
	public static String WordingForm_alignment;
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
		initializeMessages("org.frisket.ui.views.internal.properties.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
