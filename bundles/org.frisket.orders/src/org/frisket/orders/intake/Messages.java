package org.frisket.orders.intake;

import org.eclipse.osgi.util.NLS;

final class Messages extends NLS {

	public static String DateForm_ambiguous;
	public static String DateForm_noDay;
	public static String DateForm_none;
	public static String DateForm_other;
	public static String DateForm_unreadable;
	public static String OrderFile_large;
	public static String OrderIntake_known;
	public static String OrderIntake_skipped;
	public static String OrderMapping_twice;
	public static String OrderMapping_unreadable;
	public static String OrderTable_character;
	public static String OrderTable_empty;
	public static String OrderTable_emptyTitle;
	public static String OrderTable_encoding;
	public static String OrderTable_longReference;
	public static String OrderTable_noColumn;
	public static String OrderTable_noTitle;
	public static String OrderTable_quantity;
	public static String OrderTable_sameReference;
	public static String OrderTable_twoColumns;
	public static String RememberedMappings_name;

	static {
		initializeMessages("org.frisket.orders.intake.messages", Messages.class);
	}

	private Messages() {
	}
}
