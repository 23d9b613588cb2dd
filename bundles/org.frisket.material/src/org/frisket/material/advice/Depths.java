package org.frisket.material.advice;

import java.util.Arrays;

/**
 * Tries at known measures of stock and known pressures, each of which reached a depth or did not, counted where they were
 * made. The order in which they are added does not matter.
 */
final class Depths {

	/** What was tried at one measure; places with tries only, by ascending pressure. */
	record Row(double measure, double[] pressures, int[] tries, int[] hits) {

		int size() {
			return pressures.length;
		}

		/** Number of the first place from this pressure on. */
		int from(double pressure) {
			int found = Arrays.binarySearch(pressures, pressure);
			return found >= 0 ? found : -found - 1;
		}
	}

	private final Row[] rows;
	private final double[] pressures;
	private final int all;

	/** Parallel arrays; {@code hit} says whether the depth was reached. At least one try. */
	Depths(double[] measure, double[] pressure, boolean[] hit) {
		this(measure, pressure, hit, order(measure, pressure));
	}

	/** @param order of all tries, by measure and then by pressure; see {@link #order} */
	Depths(double[] measure, double[] pressure, boolean[] hit, int[] order) {
		all = hit.length;
		pressures = distinct(pressure);
		rows = new Row[distinct(measure).length];
		int at = 0;
		for (int row = 0; row < rows.length; row++) {
			int end = at;
			while (end < all && measure[order[end]] == measure[order[at]]) {
				end++;
			}
			rows[row] = row(measure[order[at]], pressure, hit, order, at, end);
			at = end;
		}
	}

	/** The places of tries by ascending measure, those of one measure by ascending pressure. */
	static int[] order(double[] measure, double[] pressure) {
		double[] measures = distinct(measure);
		double[] pressures = distinct(pressure);
		long[] keys = new long[measure.length];
		for (int i = 0; i < keys.length; i++) {
			long rank = (long) Arrays.binarySearch(measures, measure[i]) * pressures.length
					+ Arrays.binarySearch(pressures, pressure[i]);
			keys[i] = rank * keys.length + i;
		}
		Arrays.sort(keys);
		return Arrays.stream(keys).mapToInt(key -> (int) (key % measure.length)).toArray();
	}

	private static double[] distinct(double[] values) {
		double[] sorted = values.clone();
		Arrays.sort(sorted);
		int count = 0;
		for (double value : sorted) {
			if (count == 0 || sorted[count - 1] != value) {
				sorted[count++] = value;
			}
		}
		return Arrays.copyOf(sorted, count);
	}

	private static Row row(double measure, double[] pressure, boolean[] hit, int[] order, int from, int to) {
		double[] places = new double[to - from];
		int[] tries = new int[to - from];
		int[] hits = new int[to - from];
		int count = 0;
		for (int i = from; i < to; i++) {
			int each = order[i];
			if (count == 0 || places[count - 1] != pressure[each]) {
				places[count++] = pressure[each];
			}
			tries[count - 1]++;
			hits[count - 1] += hit[each] ? 1 : 0;
		}
		return new Row(measure, Arrays.copyOf(places, count), Arrays.copyOf(tries, count), Arrays.copyOf(hits, count));
	}

	/** By ascending measure. */
	Row[] rows() {
		return rows;
	}

	/** All that were tried, ascending. */
	double[] pressures() {
		return pressures;
	}

	/** Number of tries. */
	int all() {
		return all;
	}
}
