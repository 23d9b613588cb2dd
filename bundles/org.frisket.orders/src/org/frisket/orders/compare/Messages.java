package org.frisket.orders.compare;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String ChangeWords_changed;
	public static String ChangeWords_combination;
	public static String ChangeWords_down;
	public static String ChangeWords_element;
	public static String ChangeWords_fromTo;
	public static String ChangeWords_group;
	public static String ChangeWords_grouped;
	public static String ChangeWords_guest;
	public static String ChangeWords_guide;
	public static String ChangeWords_job;
	public static String ChangeWords_layer;
	public static String ChangeWords_left;
	public static String ChangeWords_mat;
	public static String ChangeWords_moved;
	public static String ChangeWords_named;
	public static String ChangeWords_no;
	public static String ChangeWords_none;
	public static String ChangeWords_numbered;
	public static String ChangeWords_order;
	public static String ChangeWords_outline;
	public static String ChangeWords_parts;
	public static String ChangeWords_picture;
	public static String ChangeWords_placement;
	public static String ChangeWords_placements;
	public static String ChangeWords_quoted;
	public static String ChangeWords_right;
	public static String ChangeWords_sheet;
	public static String ChangeWords_shifted;
	public static String ChangeWords_turned;
	public static String ChangeWords_unknown;
	public static String ChangeWords_up;
	public static String ChangeWords_weedLines;
	public static String ChangeWords_wording;
	public static String ChangeWords_yes;

	static {
		initializeMessages("org.frisket.orders.compare.messages", Messages.class);
	}

	private Messages() {
	}
}
