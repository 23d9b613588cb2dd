package org.frisket.material.calibration;

/**
 * How the right angles of one cell came out.
 *
 * @param offset the cell was made for, in mm
 * @param miss   in mm: below zero if the corner is rounded and the cut passes it by that much; above zero if it runs past
 *               the corner by that much; zero if it closes
 */
public record OffsetReading(double offset, double miss) {

	public OffsetReading {
		if (!(offset >= 0) || !(Math.abs(miss) < 10)) {
			throw new IllegalArgumentException("a cell for " + offset + " mm that misses by " + miss + " mm");
		}
	}
}
