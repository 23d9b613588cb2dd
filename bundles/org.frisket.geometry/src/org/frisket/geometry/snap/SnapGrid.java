package org.frisket.geometry.snap;

import org.frisket.geometry.Bounds;

/**
 * A square grid with a line through zero on both axes, as far as the sheet goes.
 *
 * @param step distance of its lines, in mm; above 0
 * @param area where it holds
 */
public record SnapGrid(double step, Bounds area) {

	/** @throws IllegalArgumentException if the step is not a number above zero */
	public SnapGrid {
		if (!(step > 0) || Double.isInfinite(step)) {
			throw new IllegalArgumentException("not a step of a grid: " + step);
		}
	}
}
