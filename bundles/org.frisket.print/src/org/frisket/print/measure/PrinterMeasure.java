package org.frisket.print.measure;

import java.time.LocalDate;
import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.print.register.FitKind;
import org.frisket.print.register.MeasuredLengths;
import org.frisket.print.register.MeasuredLengths.Between;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterException;
import org.frisket.print.register.RegisterFinding;
import org.frisket.print.register.Registration;

/**
 * What was read from a printed measuring sheet, with a ruler, mm. Both diagonals are needed: one alone cannot tell a skew from
 * a stretch, and the four readings have one to spare, which shows a slip.
 *
 * @param side     of the square as designed
 * @param across   its upper edge as printed
 * @param down     its left edge as printed
 * @param falling  its diagonal from the upper left corner
 * @param rising   its diagonal from the lower left corner
 */
public record PrinterMeasure(double side, double across, double down, double falling, double rising) {

	/**
	 * A printer's scales and skew.
	 *
	 * @throws RegisterException if no printer is so far off; a length was misread then
	 */
	public PrinterProfile profile(String name, LocalDate day) throws RegisterException {
		MeasuredLengths lengths = lengths();
		return PrinterProfile.of(name, Registration.fit(FitKind.AFFINE, corners(), lengths.places()), day);
	}

	/** Lengths that cannot all be right. */
	public List<RegisterFinding> findings() throws RegisterException {
		return lengths().findings();
	}

	/** From the upper left, clockwise. */
	private List<Point> corners() {
		return List.of(new Point(0, 0), new Point(side, 0), new Point(side, side), new Point(0, side));
	}

	/** Opposite edges are printed alike, for what a printer does is the same all over the sheet. */
	private MeasuredLengths lengths() throws RegisterException {
		return MeasuredLengths.of(corners(), List.of(new Between(0, 1, across), new Between(3, 2, across),
				new Between(0, 3, down), new Between(1, 2, down), new Between(0, 2, falling), new Between(3, 1, rising)));
	}
}
