package org.frisket.prepare.checks;

/**
 * How large a sheet is, or how much of a roll there is, with its margins.
 *
 * @param narrow the shorter side in mm, above 0
 * @param wide   the longer side in mm; infinite for a roll that is sold by the length
 */
public record SheetSize(double narrow, double wide) {

	/** @throws IllegalArgumentException if a side is not above 0, or the first is the longer one */
	public SheetSize {
		if (!(narrow > 0 && narrow <= wide) || Double.isInfinite(narrow)) {
			throw new IllegalArgumentException("a sheet of " + narrow + " by " + wide + " mm");
		}
	}

	/** @param one and {@code other} in either order */
	public static SheetSize of(double one, double other) {
		return new SheetSize(Math.min(one, other), Math.max(one, other));
	}
}
