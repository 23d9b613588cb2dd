package org.frisket.print.output;

import java.util.Arrays;

import org.frisket.geometry.Monitor;

/**
 * For each place of a grid the nearest seed, exactly: first along each column, then along each row by the lower envelope of
 * parabolas (Felzenszwalb and Huttenlocher, Distance Transforms of Sampled Functions, 2012; from memory).
 */
final class NearestSeeds {

	private final boolean[] seeds;
	private final int columns;
	private final int rows;
	/** For each place the row of the nearest seed in its column; -1 if there is none. */
	private final int[] rowOf;

	NearestSeeds(boolean[] seeds, int columns, int rows) {
		this.seeds = seeds;
		this.columns = columns;
		this.rows = rows;
		rowOf = new int[seeds.length];
	}

	/** Indices of seeds; -1 everywhere if there are none. */
	int[] find(Monitor monitor) {
		for (int x = 0; x < columns; x++) {
			column(x);
		}
		int[] nearest = new int[seeds.length];
		Arrays.fill(nearest, -1);
		int[] apex = new int[columns];
		double[] from = new double[columns];
		for (int y = 0; y < rows; y++) {
			monitor.check();
			row(y, nearest, apex, from);
		}
		return nearest;
	}

	private void column(int x) {
		int above = -1;
		for (int y = 0; y < rows; y++) {
			above = seeds[y * columns + x] ? y : above;
			rowOf[y * columns + x] = above;
		}
		int below = -1;
		for (int y = rows - 1; y >= 0; y--) {
			int at = y * columns + x;
			below = seeds[at] ? y : below;
			if (below >= 0 && (rowOf[at] < 0 || below - y < y - rowOf[at])) {
				rowOf[at] = below;
			}
		}
	}

	/** @param apex columns of the parabolas of the envelope @param from where each of them begins to be the lowest */
	private void row(int y, int[] nearest, int[] apex, double[] from) {
		int count = 0;
		for (int x = 0; x < columns; x++) {
			if (rowOf[y * columns + x] < 0) {
				continue;
			}
			double start = Double.NEGATIVE_INFINITY;
			while (count > 0) {
				start = crossing(y, apex[count - 1], x);
				if (start > from[count - 1]) {
					break;
				}
				count--;
				start = Double.NEGATIVE_INFINITY;
			}
			apex[count] = x;
			from[count++] = start;
		}
		int current = 0;
		for (int x = 0; x < columns && count > 0; x++) {
			while (current + 1 < count && from[current + 1] <= x) {
				current++;
			}
			nearest[y * columns + x] = rowOf[y * columns + apex[current]] * columns + apex[current];
		}
	}

	/** Where the parabola of the column on the right becomes lower than that of the left one. */
	private double crossing(int y, int left, int right) {
		double one = height(y, left) + (double) left * left;
		double other = height(y, right) + (double) right * right;
		return (other - one) / (2.0 * (right - left));
	}

	private double height(int y, int x) {
		double rise = y - rowOf[y * columns + x];
		return rise * rise;
	}
}
