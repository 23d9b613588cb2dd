package org.frisket.sheets.imposing;

import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Figures;
import org.frisket.sheets.SheetPart;

/**
 * Copies of a part that found no place.
 *
 * @param job         what placements call its job; null for the host
 * @param quantity    how many
 * @param sheetWidth  of the sheets that were tried, in mm; infinite for a roll
 * @param sheetHeight of them, or the width of the roll
 * @param tooLarge    whether it is larger than they are; otherwise there were too few
 */
public record NoRoom(String job, SheetPart part, int quantity, double sheetWidth, double sheetHeight, boolean tooLarge) {

	private static final int DECIMALS = 1;

	/** A sentence for people. */
	public String message() {
		String sheet = Double.isInfinite(sheetWidth) ? NLS.bind(Messages.NoRoom_roll, length(sheetHeight))
				: size(sheetWidth, sheetHeight);
		String own = size(part.room().bounds().width(), part.room().bounds().height());
		return NLS.bind(tooLarge ? Messages.NoRoom_tooLarge : Messages.NoRoom_tooFew,
				new Object[] { part.title(), own, sheet, quantity });
	}

	private static String size(double width, double height) {
		return Figures.number(width, DECIMALS) + " \u00d7 " + length(height);
	}

	private static String length(double mm) {
		return Figures.length(mm, DECIMALS);
	}
}
