package org.frisket.print.measure;

import java.util.List;

import org.frisket.geometry.Point;

/** By how much residuals are drawn longer than they are, so that they are seen beside a sheet. */
public final class ArrowScale {

	private static final double[] STEPS = { 1, 2, 5 };
	/** What is off by a thousandth of a millimetre is not worth an arrow. */
	private static final double MOST = 1000;

	private ArrowScale() {
	}

	/**
	 * A round factor: 1, 2 or 5 times a power of ten, from 1 to 1000, by which the longest of them stays below a length. 1 if
	 * there is nothing to see.
	 *
	 * @param residuals in mm @param longest that an arrow may be, mm
	 */
	public static double of(List<Point> residuals, double longest) {
		double most = residuals.stream().mapToDouble(Point::length).max().orElse(0);
		if (!(most > 0) || !(longest > 0)) {
			return 1;
		}
		double factor = 1;
		for (double power = 1; power <= MOST; power *= 10) {
			for (double step : STEPS) {
				if (power * step <= MOST && power * step * most <= longest) {
					factor = power * step;
				}
			}
		}
		return factor;
	}
}
