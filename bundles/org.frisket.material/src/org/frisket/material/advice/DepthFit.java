package org.frisket.material.advice;

import java.util.Arrays;

/**
 * From which pressure on a depth is reached, as a nondecreasing function of the stock's measure.
 *
 * <p>In each measure that was tried, the share of tries that reached the depth is fitted isotonically over the pressure;
 * where it passes one half lies the pressure of that measure. Those are then fitted isotonically over the measures,
 * weighted by the number of tries. Between measures it is interpolated; beyond them the nearest one stands, and whoever
 * asks has to say so.
 *
 * <p>The interval is exact and needs no model but monotony: what the {@linkplain SignTest sign test} does not rule out
 * with the {@linkplain NearestTries nearest comparable tries}. It holds for one measure alone: it is no band for all
 * measures together.
 */
final class DepthFit {

	private static final double HALF = 0.5;

	/** What is known of the pressure at one measure; the ends are infinite where no trial bounds it. */
	record Band(double pressure, double least, double most) {
	}

	/** Which pressure stands for the passage through one half. */
	enum Ends {
		/** The least that was tried and reached the depth more often than not. */
		LEAST_REACHING,
		/** The greatest that was tried and stayed above the depth more often than not. */
		GREATEST_SPARING
	}

	private final double[] measures;
	private final double[] fit;
	private final NearestTries nearest;
	/** Not a number until somebody asks: most of the time goes into them. */
	private final double[] least;
	private final double[] most;
	private final int tries;

	/** @param step of the machine's pressure: what was never reached is taken as one step beyond what was tried */
	DepthFit(Depths depths, Ends ends, double step) {
		Depths.Row[] rows = depths.rows();
		int n = rows.length;
		measures = new double[n];
		least = new double[n];
		most = new double[n];
		double[] values = new double[n];
		double[] weights = new double[n];
		nearest = new NearestTries(depths);
		Arrays.fill(least, Double.NaN);
		Arrays.fill(most, Double.NaN);
		for (int m = 0; m < n; m++) {
			measures[m] = rows[m].measure();
			weights[m] = Arrays.stream(rows[m].tries()).sum();
			values[m] = passage(rows[m], ends, step);
		}
		tries = depths.all();
		fit = IsotonicFit.nondecreasing(values, weights);
	}

	private static double passage(Depths.Row row, Ends ends, double step) {
		int n = row.size();
		double[] shares = new double[n];
		double[] weights = new double[n];
		for (int p = 0; p < n; p++) {
			shares[p] = (double) row.hits()[p] / row.tries()[p];
			weights[p] = row.tries()[p];
		}
		double[] share = IsotonicFit.nondecreasing(shares, weights);
		double[] pressures = row.pressures();
		if (ends == Ends.LEAST_REACHING) {
			for (int p = 0; p < n; p++) {
				if (share[p] > HALF) {
					return pressures[p];
				}
			}
			return pressures[n - 1] + step;
		}
		for (int p = n - 1; p >= 0; p--) {
			if (share[p] < HALF) {
				return pressures[p];
			}
		}
		return pressures[0] - step;
	}

	/** What is known at a measure, tried or not. */
	synchronized Band at(double measure) {
		int found = Arrays.binarySearch(measures, measure);
		int below = found >= 0 ? found : -found - 2;
		int above = found >= 0 ? found : -found - 1;
		return new Band(pressure(measure), below < 0 ? Double.NEGATIVE_INFINITY : least(below),
				above == measures.length ? Double.POSITIVE_INFINITY : most(above));
	}

	private double least(int measure) {
		if (Double.isNaN(least[measure])) {
			least[measure] = nearest.tooLow(measure);
		}
		return least[measure];
	}

	private double most(int measure) {
		if (Double.isNaN(most[measure])) {
			most[measure] = nearest.tooHigh(measure);
		}
		return most[measure];
	}

	/** The pressure alone. */
	double pressure(double measure) {
		int found = Arrays.binarySearch(measures, measure);
		if (found >= 0) {
			return fit[found];
		}
		int above = -found - 1;
		if (above == 0 || above == measures.length) {
			return above == 0 ? fit[0] : fit[above - 1];
		}
		double share = (measure - measures[above - 1]) / (measures[above] - measures[above - 1]);
		// held between the two, so that rounding cannot lead out
		return Math.max(fit[above - 1], Math.min(fit[above], fit[above - 1] + share * (fit[above] - fit[above - 1])));
	}

	/** Whether a measure lies within those tried. */
	boolean covers(double measure) {
		return measure >= measures[0] && measure <= measures[measures.length - 1];
	}

	double leastMeasure() {
		return measures[0];
	}

	double greatestMeasure() {
		return measures[measures.length - 1];
	}

	int tries() {
		return tries;
	}
}
