package org.frisket.material.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

class NearestTriesTest {

	/** A place of the table, with how far it is from the one that is asked about. */
	private record Place(int tries, int against, double key, double away) {
	}

	/** As the rule says it: all comparable places, sorted by distance, for each pressure anew. */
	private static final class SlowTries {

		private final Depths depths;

		SlowTries(Depths depths) {
			this.depths = depths;
		}

		double tooLow(int row) {
			double bound = Double.NEGATIVE_INFINITY;
			for (double pressure : depths.pressures()) {
				if (!isRuledOut(row, pressure, 1)) {
					return bound;
				}
				bound = pressure;
			}
			return bound;
		}

		double tooHigh(int row) {
			double bound = Double.POSITIVE_INFINITY;
			for (int i = depths.pressures().length - 1; i >= 0; i--) {
				if (!isRuledOut(row, depths.pressures()[i], -1)) {
					return bound;
				}
				bound = depths.pressures()[i];
			}
			return bound;
		}

		private boolean isRuledOut(int row, double pressure, int way) {
			Depths.Row[] rows = depths.rows();
			double measures = rows[rows.length - 1].measure() - rows[0].measure();
			double pressures = depths.pressures()[depths.pressures().length - 1] - depths.pressures()[0];
			List<Place> places = new ArrayList<>();
			for (int each = row; each >= 0 && each < rows.length; each -= way) {
				double away = Math.abs(rows[each].measure() - rows[row].measure()) / (measures > 0 ? measures : 1);
				for (int i = 0; i < rows[each].size(); i++) {
					if ((rows[each].pressures()[i] - pressure) * way >= 0) {
						int tries = rows[each].tries()[i];
						int hits = rows[each].hits()[i];
						places.add(new Place(tries, way > 0 ? hits : tries - hits,
								away + way * rows[each].pressures()[i] / (pressures > 0 ? pressures : 1), away));
					}
				}
			}
			places.sort(Comparator.comparingDouble(Place::key).thenComparingDouble(Place::away));
			int tries = 0;
			int against = 0;
			for (int i = 0; i < places.size() && tries < NearestTries.nearest(depths.all()); i++) {
				tries += places.get(i).tries();
				against += places.get(i).against();
			}
			return against <= SignTest.tooFew(tries);
		}
	}

	/** Grids with many equal distances, and scattered tries; few and many, clear and noisy. */
	@Test
	void walkFindsTheSameAsSortingAllPlacesEachTime() {
		Random random = new Random(1710);
		int bounded = 0;
		for (int round = 0; round < 1500; round++) {
			int n = 1 + random.nextInt(round % 10 == 0 ? 600 : 80);
			boolean grid = random.nextBoolean();
			double noise = random.nextInt(4) * 5;
			double[] measures = new double[n];
			double[] pressures = new double[n];
			boolean[] hits = new boolean[n];
			int across = 1 + random.nextInt(15);
			for (int i = 0; i < n; i++) {
				measures[i] = 80 + 20 * random.nextInt(across);
				pressures[i] = grid ? 5 * random.nextInt(9) : 40 * random.nextDouble();
				hits[i] = pressures[i] + noise * random.nextGaussian() > measures[i] / 12;
			}
			Depths depths = new Depths(measures, pressures, hits);
			NearestTries fast = new NearestTries(depths);
			SlowTries slow = new SlowTries(depths);
			for (int row = 0; row < depths.rows().length; row++) {
				assertEquals(slow.tooLow(row), fast.tooLow(row), "row " + row + " of round " + round);
				assertEquals(slow.tooHigh(row), fast.tooHigh(row), "row " + row + " of round " + round);
				bounded += Double.isFinite(fast.tooLow(row)) && Double.isFinite(fast.tooHigh(row)) ? 1 : 0;
			}
		}
		assertTrue(bounded > 1000, "too few cases would tell a difference: " + bounded);
	}
}
