package org.frisket.geometry;

/**
 * How far, in millimetres, a result may lie from the exact one. It travels with every call; there is
 * no global one.
 */
public record Tolerance(double mm) {

	/** 0.02 mm: finer than a drag knife follows. */
	public static final Tolerance DEFAULT = new Tolerance(0.02);

	/** @throws IllegalArgumentException unless {@code mm} is positive and finite */
	public Tolerance {
		if (!(mm > 0) || !Double.isFinite(mm)) {
			throw new IllegalArgumentException("tolerance must be a positive length, got " + mm);
		}
	}

	/** A part of this tolerance, for a step whose error adds to others. */
	public Tolerance share(double fraction) {
		return new Tolerance(mm * fraction);
	}
}
