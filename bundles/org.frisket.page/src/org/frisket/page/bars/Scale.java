package org.frisket.page.bars;

import java.util.ArrayList;
import java.util.List;

/**
 * Round numbers along an axis that begins at nothing.
 *
 * @param step from one to the next: 1, 2 or 5 of a power of ten
 * @param end  the last
 */
record Scale(double step, double end) {

	private static final double[] ROUND = { 1, 2, 5, 10 };

	/**
	 * @param most     that is to be shown
	 * @param steps    how many there are at most
	 * @param decimals a step is not finer than these
	 */
	static Scale to(double most, int steps, int decimals) {
		double finest = Math.pow(10, -decimals);
		double wanted = Math.max(most / steps, finest);
		double power = Math.pow(10, Math.floor(Math.log10(wanted) + 1e-9));
		double step = power * ROUND[ROUND.length - 1];
		for (int i = ROUND.length - 1; i >= 0; i--) {
			if (ROUND[i] * power >= wanted * (1 - 1e-9)) {
				step = ROUND[i] * power;
			}
		}
		return new Scale(step, step * Math.max(1, Math.ceil(most / step - 1e-9)));
	}

	/** From nothing to the end. */
	List<Double> marks() {
		List<Double> marks = new ArrayList<>();
		for (int i = 0; i <= Math.round(end / step); i++) {
			marks.add(i * step);
		}
		return marks;
	}
}
