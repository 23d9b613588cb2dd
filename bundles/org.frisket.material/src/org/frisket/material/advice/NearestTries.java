package org.frisket.material.advice;

/**
 * Rules pressures out with the tries that monotony makes comparable: a try with at least this pressure in stock of at
 * most this measure is at least as likely to reach the depth; one the other way round at most. Of those, the nearest are
 * taken, in the distance that counts the whole range of measures like the whole range of pressures. They are chosen by
 * where they were made, never by what came of them, so that the sign test is exact. For one thread.
 */
final class NearestTries {

	/** With fewer no sign test rules anything out. With many trials half their square root is taken, up to the most. */
	private static final int FEWEST = 5;
	private static final int MOST = 11;

	private final Depths.Row[] rows;
	private final double[] pressures;
	private final double measureRange;
	private final double pressureRange;
	private final int nearest;
	/** Next place of each row that is open; made once, for there are many questions. */
	private final int[] next;
	/** How far it is. */
	private final double[] distances;

	NearestTries(Depths depths) {
		rows = depths.rows();
		pressures = depths.pressures();
		measureRange = range(rows[rows.length - 1].measure() - rows[0].measure());
		pressureRange = range(pressures[pressures.length - 1] - pressures[0]);
		next = new int[rows.length];
		nearest = Math.max(FEWEST, Math.min(MOST, (int) (Math.sqrt(depths.all()) / 2)));
		distances = new double[rows.length];
	}

	private static double range(double range) {
		return range > 0 ? range : 1;
	}

	/** The greatest pressure below which all are ruled out as too low; minus infinity if none is. */
	double tooLow(int row) {
		double bound = Double.NEGATIVE_INFINITY;
		for (double pressure : pressures) {
			if (!isRuledOut(row, pressure, -1)) {
				return bound;
			}
			bound = pressure;
		}
		return bound;
	}

	/** The least pressure above which all are ruled out as too high; infinity if none is. */
	double tooHigh(int row) {
		double bound = Double.POSITIVE_INFINITY;
		for (int i = pressures.length - 1; i >= 0; i--) {
			if (!isRuledOut(row, pressures[i], 1)) {
				return bound;
			}
			bound = pressures[i];
		}
		return bound;
	}

	/** @param side -1 to go to lighter stock and more pressure, 1 to heavier stock and less pressure */
	private boolean isRuledOut(int row, double pressure, int side) {
		int open = row;
		int end = side < 0 ? -1 : rows.length;
		int tries = 0;
		int against = 0;
		while (tries < nearest) {
			// rows are opened as they come near enough to hold the next one
			int best = -1;
			double least = Double.POSITIVE_INFINITY;
			for (int each = row; each != end; each += side) {
				double away = Math.abs(rows[each].measure() - rows[row].measure()) / measureRange;
				if (away >= least) {
					break;
				}
				if (each == open) {
					next[each] = first(rows[each], pressure, side);
					distances[each] = away + distance(rows[each], next[each], pressure);
					open += side;
				}
				if (distances[each] < least) {
					least = distances[each];
					best = each;
				}
			}
			if (best < 0) {
				break;
			}
			int place = next[best];
			tries += rows[best].tries()[place];
			against += side < 0 ? rows[best].hits()[place] : rows[best].tries()[place] - rows[best].hits()[place];
			next[best] -= side;
			distances[best] = Math.abs(rows[best].measure() - rows[row].measure()) / measureRange
					+ distance(rows[best], next[best], pressure);
		}
		return against <= SignTest.tooFew(tries);
	}

	private static int first(Depths.Row row, double pressure, int side) {
		int from = row.from(pressure);
		boolean itself = from < row.size() && row.pressures()[from] == pressure;
		return side < 0 || itself ? from : from - 1;
	}

	private double distance(Depths.Row row, int place, double pressure) {
		return place < 0 || place >= row.size() ? Double.POSITIVE_INFINITY
				: Math.abs(row.pressures()[place] - pressure) / pressureRange;
	}
}
