package org.frisket.material.tools;

import org.eclipse.osgi.util.NLS;

/** What is said of tools and machines, in the user's language. */
final class Messages extends NLS {

	public static String Checks_unknown;
	public static String MachineOptions_allMargin;
	public static String MachineOptions_bottom;
	public static String MachineOptions_height;
	public static String MachineOptions_left;
	public static String MachineOptions_marks;
	public static String MachineOptions_name;
	public static String MachineOptions_origin;
	public static String MachineOptions_passes;
	public static String MachineOptions_process;
	public static String MachineOptions_right;
	public static String MachineOptions_scaleX;
	public static String MachineOptions_scaleY;
	public static String MachineOptions_top;
	public static String MachineOptions_units;
	public static String MachineOptions_width;
	public static String MachineOptions_x;
	public static String MachineOptions_y;
	public static String MachineOptions_zero;
	public static String ManualQuestions_area;
	public static String ManualQuestions_areaWhere;
	public static String ManualQuestions_areaWhy;
	public static String ManualQuestions_axes;
	public static String ManualQuestions_axesWhere;
	public static String ManualQuestions_axesWhy;
	public static String ManualQuestions_margins;
	public static String ManualQuestions_marginsWhere;
	public static String ManualQuestions_marginsWhy;
	public static String ManualQuestions_marks;
	public static String ManualQuestions_marksWhere;
	public static String ManualQuestions_marksWhy;
	public static String ManualQuestions_motion;
	public static String ManualQuestions_motionWhere;
	public static String ManualQuestions_motionWhy;
	public static String ManualQuestions_name;
	public static String ManualQuestions_nameWhere;
	public static String ManualQuestions_nameWhy;
	public static String ManualQuestions_passes;
	public static String ManualQuestions_passesWhere;
	public static String ManualQuestions_passesWhy;
	public static String ManualQuestions_pressure;
	public static String ManualQuestions_pressureWhere;
	public static String ManualQuestions_pressureWhy;
	public static String ManualQuestions_process;
	public static String ManualQuestions_processWhere;
	public static String ManualQuestions_processWhy;
	public static String ManualQuestions_scale;
	public static String ManualQuestions_scaleWhere;
	public static String ManualQuestions_scaleWhy;
	public static String ManualQuestions_speed;
	public static String ManualQuestions_speedWhere;
	public static String ManualQuestions_speedWhy;
	public static String ManualQuestions_units;
	public static String ManualQuestions_unitsWhere;
	public static String ManualQuestions_unitsWhy;
	public static String ManualQuestions_words;
	public static String ManualQuestions_wordsWhere;
	public static String ManualQuestions_wordsWhy;
	public static String MotionOptions_acceleration;
	public static String MotionOptions_arcs;
	public static String MotionOptions_change;
	public static String MotionOptions_deviation;
	public static String MotionOptions_down;
	public static String MotionOptions_lift;
	public static String MotionOptions_lower;
	public static String MotionOptions_noWord;
	public static String MotionOptions_stop;
	public static String MotionOptions_tolerance;
	public static String MotionOptions_travel;
	public static String MotionOptions_up;
	public static String ScaleOptions_leastMeans;
	public static String ScaleOptions_mostMeans;
	public static String ScaleOptions_order;
	public static String ScaleOptions_pressureLeast;
	public static String ScaleOptions_pressureMost;
	public static String ScaleOptions_pressureStep;
	public static String ScaleOptions_pressureUnit;
	public static String ScaleOptions_speedLeast;
	public static String ScaleOptions_speedMost;
	public static String ScaleOptions_speedStep;
	public static String ScaleOptions_speedUnit;
	public static String ScaleOptions_wideStep;
	public static String ToolOptions_angle;
	public static String ToolOptions_colour;
	public static String ToolOptions_crease;
	public static String ToolOptions_cut;
	public static String ToolOptions_dullAfter;
	public static String ToolOptions_line;
	public static String ToolOptions_name;
	public static String ToolOptions_noColour;
	public static String ToolOptions_offset;
	public static String ToolOptions_tie;
	public static String ToolOptions_worn;

	static {
		initializeMessages("org.frisket.material.tools.messages", Messages.class);
	}

	private Messages() {
	}
}
