package org.frisket.material.weights;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String Amount_noUnit;
	public static String Amount_number;
	public static String Amount_unknownUnit;
	public static String Amount_unreadable;
	public static String Measures_beyond;
	public static String Measures_bulk;
	public static String Measures_caliper;
	public static String Measures_grammage;
	public static String Measures_mass;
	public static String Measures_notAbove0;
	public static String Measures_pounds;
	public static String Measures_side;
	public static String Pack_count;
	public static String Reading_example;
	public static String Reading_unit;

	static {
		initializeMessages("org.frisket.material.weights.messages", Messages.class);
	}

	private Messages() {
	}
}
