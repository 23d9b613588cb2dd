package org.frisket.ui.bench.internal.options;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ChoiceName_area;
	public static String ChoiceName_away;
	public static String ChoiceName_blade;
	public static String ChoiceName_centre;
	public static String ChoiceName_clockwise;
	public static String ChoiceName_counterClockwise;
	public static String ChoiceName_either;
	public static String ChoiceName_foil;
	public static String ChoiceName_laser;
	public static String ChoiceName_left;
	public static String ChoiceName_line;
	public static String ChoiceName_lowerLeft;
	public static String ChoiceName_lowerRight;
	public static String ChoiceName_margins;
	public static String ChoiceName_near;
	public static String ChoiceName_no;
	public static String ChoiceName_part;
	public static String ChoiceName_right;
	public static String ChoiceName_sheet;
	public static String ChoiceName_total;
	public static String ChoiceName_upperLeft;
	public static String ChoiceName_upperRight;
	public static String ChoiceName_yes;

	static {
		initializeMessages("org.frisket.ui.bench.internal.options.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
