package org.frisket.material.advice;

import java.util.Arrays;
import java.util.stream.IntStream;

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
		all = hit.length;
		pressures = Arrays.stream(pressure).sorted().distinct().toArray();
		Integer[] order = IntStream.range(0, all).boxed().toArray(Integer[]::new);
		Arrays.sort(order, (a, b) -> {
			int byMeasure = Double.compare(measure[a], measure[b]);
			return byMeasure != 0 ? byMeasure : Double.compare(pressure[a], pressure[b]);
		});
		rows = new Row[(int) Arrays.stream(measure).distinct().count()];
		int at = 0;
		for (int row = 0; row < rows.length; row++) {
			int end = at;
			while (end < all && measure[order[end]] == measure[order[at]]) {
				end++;
			}
			rows[row] = row(measure[order[at]], pressure, hit, Arrays.copyOfRange(order, at, end));
			at = end;
		}
	}

	private static Row row(double measure, double[] pressure, boolean[] hit, Integer[] order) {
		double[] places = new double[order.length];
		int[] tries = new int[order.length];
		int[] hits = new int[order.length];
		int count = 0;
		for (int each : order) {
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
