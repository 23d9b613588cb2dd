package org.frisket.impose;

/**
 * What parts are laid on. The length runs along x, the width along y.
 *
 * @param length in mm; infinite for a roll
 * @param width  in mm
 * @param atHand how many there are, 1 at least
 */
public record Ground(double length, double width, int atHand) {

	/** @throws IllegalArgumentException for what has no area, or none at hand */
	public Ground {
		if (!(length > 0) || !(width > 0) || Double.isInfinite(width)) {
			throw new IllegalArgumentException("a sheet of " + length + " \u00d7 " + width + " mm");
		}
		if (atHand < 1) {
			throw new IllegalArgumentException("no sheet at hand");
		}
	}

	/** As many as are needed. */
	public static Ground sheets(double length, double width) {
		return new Ground(length, width, Integer.MAX_VALUE);
	}

	public static Ground roll(double width) {
		return new Ground(Double.POSITIVE_INFINITY, width, 1);
	}

	public boolean isRoll() {
		return Double.isInfinite(length);
	}
}
