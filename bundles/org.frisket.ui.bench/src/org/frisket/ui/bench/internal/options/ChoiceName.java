package org.frisket.ui.bench.internal.options;

/** What the words of choices are called on the screen: in files and on the command line they stay as they are. */
public final class ChoiceName {

	private ChoiceName() {
	}

	/** The word itself where there is no other name for it. */
	public static String of(String word) {
		return switch (word) {
		case "blade" -> Messages.ChoiceName_blade; //$NON-NLS-1$
		case "foil" -> Messages.ChoiceName_foil; //$NON-NLS-1$
		case "laser" -> Messages.ChoiceName_laser; //$NON-NLS-1$
		case "right" -> Messages.ChoiceName_right; //$NON-NLS-1$
		case "left" -> Messages.ChoiceName_left; //$NON-NLS-1$
		case "away" -> Messages.ChoiceName_away; //$NON-NLS-1$
		case "near" -> Messages.ChoiceName_near; //$NON-NLS-1$
		case "lower-left" -> Messages.ChoiceName_lowerLeft; //$NON-NLS-1$
		case "lower-right" -> Messages.ChoiceName_lowerRight; //$NON-NLS-1$
		case "upper-left" -> Messages.ChoiceName_upperLeft; //$NON-NLS-1$
		case "upper-right" -> Messages.ChoiceName_upperRight; //$NON-NLS-1$
		case "centre" -> Messages.ChoiceName_centre; //$NON-NLS-1$
		case "area" -> Messages.ChoiceName_area; //$NON-NLS-1$
		case "margins" -> Messages.ChoiceName_margins; //$NON-NLS-1$
		case "yes" -> Messages.ChoiceName_yes; //$NON-NLS-1$
		case "no" -> Messages.ChoiceName_no; //$NON-NLS-1$
		case "part" -> Messages.ChoiceName_part; //$NON-NLS-1$
		case "sheet" -> Messages.ChoiceName_sheet; //$NON-NLS-1$
		case "either" -> Messages.ChoiceName_either; //$NON-NLS-1$
		case "clockwise" -> Messages.ChoiceName_clockwise; //$NON-NLS-1$
		case "counter-clockwise" -> Messages.ChoiceName_counterClockwise; //$NON-NLS-1$
		case "total" -> Messages.ChoiceName_total; //$NON-NLS-1$
		case "line" -> Messages.ChoiceName_line; //$NON-NLS-1$
		default -> word;
		};
	}
}
