package org.frisket.print.output;

import java.util.Optional;

import org.frisket.print.register.PrinterProfile;

/**
 * How sheets are printed.
 *
 * @param bleed    in mm, how far art goes on beyond a cut along its edge, where its picture does not say otherwise
 * @param knockOut whether art is left out where pieces of layers above will cover it
 * @param turn     over which edge a sheet is turned for its back
 * @param code     whether each sheet carries a code that names it
 * @param ruler    whether each sheet carries a line of 100 mm to measure
 * @param steps    whether the lines to cut are in the print file too, as processing steps that a press does not print
 * @param printer  whose scale and skew are undone beforehand; empty to print as designed
 */
public record PrintOptions(double bleed, boolean knockOut, TurnEdge turn, boolean code, boolean ruler,
		boolean steps, Optional<PrinterProfile> printer) {

	/** Common practice for cards and labels, no source. */
	public static final double USUAL_BLEED = 3;
	public static final PrintOptions USUAL = new PrintOptions(USUAL_BLEED, false, TurnEdge.SIDE, true, true, false,
			Optional.empty());
	private static final double MOST_BLEED = 50;

	/** @throws IllegalArgumentException if the bleed is no length up to 50 mm */
	public PrintOptions {
		if (!(bleed >= 0 && bleed <= MOST_BLEED)) {
			throw new IllegalArgumentException(Messages.PrintOptions_bleed);
		}
	}

	public PrintOptions on(PrinterProfile other) {
		return new PrintOptions(bleed, knockOut, turn, code, ruler, steps, Optional.of(other));
	}
}
