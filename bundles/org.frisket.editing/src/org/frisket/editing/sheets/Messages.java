package org.frisket.editing.sheets;

import org.eclipse.osgi.util.NLS;

/** The names of edits in the user's language. */
final class Messages extends NLS {

	public static String AddSheet_name;
	public static String ChangeGuests_dismiss;
	public static String ChangeGuests_invite;
	public static String ChangeSheet_fit;
	public static String ChangeSheet_gap;
	public static String ChangeSheet_leftover;
	public static String ChangeSheet_margin;
	public static String ChangeSheet_name;
	public static String ChangeSheet_printMargin;
	public static String ChangeSheet_printer;
	public static String ChangeSheet_size;
	public static String DuplicatePlacements_name;
	public static String ForgetMissing_name;
	public static String LaySheets_name;
	public static String MovePlacements_name;
	public static String MoveToSheet_name;
	public static String PinPlacements_free;
	public static String PinPlacements_pin;
	public static String RemovePlacements_name;
	public static String RemoveSheet_name;
	public static String SetMarks_name;
	public static String SetMarks_remove;
	public static String SetMeasures_forget;
	public static String SetMeasures_name;
	public static String SheetTargets_part;
	public static String SheetTargets_parts;
	public static String TurnPlacements_name;

	static {
		initializeMessages("org.frisket.editing.sheets.messages", Messages.class);
	}

	private Messages() {
	}
}
