package org.frisket.print.register;

import java.time.LocalDate;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * What a printer makes of a sheet every time: its scales and its skew, measured once. Where a sheet lies and how it is turned
 * is no part of it. Either the art is changed before it is printed, or the cuts afterwards, never both:
 * <ul>
 * <li>{@link #forArt} before printing is what to prefer: the print comes out in its true size, and cuts stay as designed;
 * <li>{@link #forCuts} is for sheets that are printed already and have no marks: cuts follow the print, and parts are off in
 * size as the print is.
 * </ul>
 * Marks that are measured on the sheet itself tell all of this anew, and more; then no profile is to be applied.
 *
 * @param name     what the studio calls the printer
 * @param scaleX   printed by designed length along x
 * @param scaleY   the same along y
 * @param skew     by how much the printed y axis leans towards the x axis, in radians
 * @param measured the day
 * @param marks    how many were measured
 */
public record PrinterProfile(String name, double scaleX, double scaleY, double skew, LocalDate measured, int marks) {

	/** Beyond these it is a slip: a printer that is so far off is to be mended. */
	private static final double MOST_STRETCH = 0.1;
	private static final double MOST_SKEW = Math.toRadians(3);
	private static final int LONGEST_NAME = 60;

	/** @throws IllegalArgumentException with a sentence, if a number is beyond what printers do or the name is none */
	public PrinterProfile {
		name = name.strip();
		if (name.isEmpty() || name.length() > LONGEST_NAME || name.chars().anyMatch(c -> c == ';' || c < ' ')) {
			throw new IllegalArgumentException(NLS.bind(Messages.PrinterProfile_name, LONGEST_NAME));
		}
		if (!(Math.abs(scaleX - 1) <= MOST_STRETCH) || !(Math.abs(scaleY - 1) <= MOST_STRETCH)
				|| !(Math.abs(skew) <= MOST_SKEW)) {
			throw new IllegalArgumentException(Messages.PrinterProfile_slip);
		}
	}

	/** The same under another name. @throws IllegalArgumentException with a sentence, if the name is none */
	public PrinterProfile named(String other) {
		return new PrinterProfile(other, scaleX, scaleY, skew, measured, marks);
	}

	/**
	 * What an affine fit says of the printer.
	 *
	 * @throws RegisterException if the fit is of another kind, or blocked, or beyond what printers do
	 */
	public static PrinterProfile of(String name, Registration fit, LocalDate measured) throws RegisterException {
		if (fit.kind() != FitKind.AFFINE || fit.isBlocked()) {
			throw new RegisterException(Messages.PrinterProfile_affine);
		}
		Lie lie = fit.lie();
		try {
			return new PrinterProfile(name, lie.scaleX(), lie.scaleY(), lie.skew(), measured, fit.designed().size());
		} catch (IllegalArgumentException e) {
			throw new RegisterException(e.getMessage());
		}
	}

	/** What the printer does, about the place that stays. */
	private Transform printed(Point fixed) {
		Transform linear = new Transform(scaleX, 0, scaleY * Math.sin(skew), scaleY * Math.cos(skew), 0, 0);
		return Transform.translation(-fixed.x(), -fixed.y()).then(linear)
				.then(Transform.translation(fixed.x(), fixed.y()));
	}

	/** What is done to art before it is printed, so that the printer undoes it. @param fixed the place that stays */
	public Transform forArt(Point fixed) {
		return printed(fixed).inverse();
	}

	/** What is done to cuts in a sheet that was printed as designed. @param fixed the place that stays */
	public Transform forCuts(Point fixed) {
		return printed(fixed);
	}
}
