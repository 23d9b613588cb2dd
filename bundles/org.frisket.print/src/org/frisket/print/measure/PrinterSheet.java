package org.frisket.print.measure;

import org.frisket.geometry.Bounds;

/**
 * A sheet that a printer is measured by: one square, as large as the sheet allows and a ruler reaches.
 *
 * @param width  of the sheet, mm
 * @param height of it, mm
 */
public record PrinterSheet(double width, double height) {

	/** Beyond the margin of nearly all printers; common practice, no source. */
	private static final double MARGIN = 15;
	private static final double STEP = 10;
	/** Its diagonal is 283 mm, which a ruler of 300 mm still measures. */
	private static final double LARGEST = 200;
	private static final double SMALLEST = 50;
	/** Words stand below the square, beside the ends of its lines. */
	private static final double WORDS = 20;

	/** @throws IllegalArgumentException if there is no room for a square that is worth measuring */
	public PrinterSheet {
		if (!(side(width, height) >= SMALLEST)) {
			throw new IllegalArgumentException(Messages.PrinterSheet_small);
		}
	}

	private static double side(double width, double height) {
		double room = Math.min(width - 2 * MARGIN, height - 2 * MARGIN - WORDS);
		return Math.min(LARGEST, Math.floor(room / STEP) * STEP);
	}

	/** Of the square, mm, between the middles of its lines. */
	public double side() {
		return side(width, height);
	}

	/** Where the square stands, mm from the upper left corner of the sheet. */
	public Bounds square() {
		double left = (width - side()) / 2;
		double top = (height - WORDS - side()) / 2;
		return new Bounds(left, top, left + side(), top + side());
	}
}
