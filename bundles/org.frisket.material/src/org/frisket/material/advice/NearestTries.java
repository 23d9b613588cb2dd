package org.frisket.material.advice;

/**
 * Rules pressures out with the tries that monotony makes comparable: a try with at least this pressure in stock of at
 * most this measure is at least as likely to reach the depth; one the other way round at most. Of those, the nearest are
 * taken, in the distance that counts the whole range of measures like the whole range of pressures, places in nearer
 * stock first where distances are the same. They are chosen by where they were made, never by what came of them, so that
 * the sign test is exact.
 * <p>
 * Pressures are ruled out one after the other, from the end. From one to the next all distances become less by the same,
 * so that their order stays: what was taken is kept, but for places that are passed, and more is taken from where it
 * ended. A place is so looked at once for each measure, instead of once for each pressure. For one thread.
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
	/** Rows that a walk has opened, the nearest first: which, their next place, and its distance; for all walks. */
	private final int[] openRows;
	private final int[] openPlaces;
	private final double[] openKeys;

	NearestTries(Depths depths) {
		rows = depths.rows();
		pressures = depths.pressures();
		measureRange = range(rows[rows.length - 1].measure() - rows[0].measure());
		pressureRange = range(pressures[pressures.length - 1] - pressures[0]);
		nearest = nearest(depths.all());
		openRows = new int[rows.length];
		openPlaces = new int[rows.length];
		openKeys = new double[rows.length];
	}

	private static double range(double range) {
		return range > 0 ? range : 1;
	}

	/** How many tries are taken at least, out of so many. */
	static int nearest(int all) {
		return Math.max(FEWEST, Math.min(MOST, (int) (Math.sqrt(all) / 2)));
	}

	/** The greatest pressure below which all are ruled out as too low; minus infinity if none is. */
	double tooLow(int row) {
		Walk walk = new Walk(row, 1);
		double bound = Double.NEGATIVE_INFINITY;
		for (int i = 0; i < pressures.length && walk.isRuledOut(pressures[i]); i++) {
			bound = pressures[i];
		}
		return bound;
	}

	/** The least pressure above which all are ruled out as too high; infinity if none is. */
	double tooHigh(int row) {
		Walk walk = new Walk(row, -1);
		double bound = Double.POSITIVE_INFINITY;
		for (int i = pressures.length - 1; i >= 0 && walk.isRuledOut(pressures[i]); i--) {
			bound = pressures[i];
		}
		return bound;
	}

	/** From pressure to pressure at one measure; upwards over lighter stock, or downwards over heavier. */
	private final class Walk {

		private final int row;
		/** 1 upwards, -1 downwards. */
		private final int way;
		private int open;
		/** The next row to be opened. */
		private int unopened;
		/** What is taken, in the order of distance: rows and their places. */
		private final int[] takenRows = new int[nearest];
		private final int[] takenPlaces = new int[nearest];
		private int taken;
		private int tries;
		private int against;

		Walk(int row, int way) {
			this.row = row;
			this.way = way;
			unopened = row;
		}

		/** To be asked in the order of the walk. */
		boolean isRuledOut(double pressure) {
			drop(pressure);
			while (tries < nearest) {
				int next = next(pressure);
				if (next < 0) {
					break;
				}
				take(openRows[next], openPlaces[next]);
				moveOn(next, openPlaces[next] + way);
			}
			return against <= SignTest.tooFew(tries);
		}

		private boolean isPassed(int ofRow, int place, double pressure) {
			return (rows[ofRow].pressures()[place] - pressure) * way < 0;
		}

		private void drop(double pressure) {
			int kept = 0;
			for (int i = 0; i < taken; i++) {
				if (isPassed(takenRows[i], takenPlaces[i], pressure)) {
					count(takenRows[i], takenPlaces[i], -1);
				} else {
					takenRows[kept] = takenRows[i];
					takenPlaces[kept++] = takenPlaces[i];
				}
			}
			taken = kept;
		}

		private void take(int ofRow, int place) {
			takenRows[taken] = ofRow;
			takenPlaces[taken++] = place;
			count(ofRow, place, 1);
		}

		private void count(int ofRow, int place, int times) {
			int all = rows[ofRow].tries()[place];
			int hits = rows[ofRow].hits()[place];
			tries += times * all;
			against += times * (way > 0 ? hits : all - hits);
		}

		/** The open row with the nearest place that is not taken; -1 if there is none. */
		private int next(double pressure) {
			while (true) {
				int best = best();
				// a row is opened once it is near enough to hold the next place
				if (unopened >= 0 && unopened < rows.length
						&& (best < 0 || away(unopened) + way * pressure / pressureRange < openKeys[best])) {
					openRows[open] = unopened;
					moveOn(open++, first(rows[unopened], pressure));
					unopened -= way;
				} else if (best < 0 || !isPassed(openRows[best], openPlaces[best], pressure)) {
					return best;
				} else {
					moveOn(best, first(rows[openRows[best]], pressure));
				}
			}
		}

		/** The first of those that are nearest. */
		private int best() {
			int best = -1;
			double least = Double.POSITIVE_INFINITY;
			for (int i = 0; i < open; i++) {
				if (openKeys[i] < least) {
					least = openKeys[i];
					best = i;
				}
			}
			return best;
		}

		private double away(int other) {
			return Math.abs(rows[other].measure() - rows[row].measure()) / measureRange;
		}

		/** To another place of a row, which is closed if it has no more. */
		private void moveOn(int which, int place) {
			Depths.Row of = rows[openRows[which]];
			if (place >= 0 && place < of.size()) {
				openPlaces[which] = place;
				openKeys[which] = away(openRows[which]) + way * of.pressures()[place] / pressureRange;
				return;
			}
			open--;
			System.arraycopy(openRows, which + 1, openRows, which, open - which);
			System.arraycopy(openPlaces, which + 1, openPlaces, which, open - which);
			System.arraycopy(openKeys, which + 1, openKeys, which, open - which);
		}

		private int first(Depths.Row of, double pressure) {
			int from = of.from(pressure);
			boolean itself = from < of.size() && of.pressures()[from] == pressure;
			return way > 0 || itself ? from : from - 1;
		}
	}
}
