package org.frisket.material.desk;

import org.eclipse.osgi.util.NLS;

/** What is said at the desk, in the user's language. */
final class Messages extends NLS {

	public static String OffsetAnswers_cells;
	public static String OffsetAnswers_far;
	public static String RunPlan_range;
	public static String ScaleAnswers_positive;
	public static String SheetPlan_many;
	public static String SheetPlan_negative;
	public static String SheetPlan_order;
	public static String SheetPlan_same;
	public static String SheetPlan_size;
	public static String SheetPlan_step;
	public static String TypedNumber_empty;
	public static String TypedNumber_form;
	public static String TypedNumber_formUnit;

	static {
		initializeMessages("org.frisket.material.desk.messages", Messages.class);
	}

	private Messages() {
	}
}
