package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.junit.jupiter.api.Test;

class NearestSeedsTest {

	@Test
	void noSeedIsNearerThanTheOneFound() {
		Random random = new Random(7);
		for (int round = 0; round < 60; round++) {
			int columns = 1 + random.nextInt(23);
			int rows = 1 + random.nextInt(23);
			boolean[] seeds = new boolean[columns * rows];
			for (int i = random.nextInt(6); i >= 0; i--) {
				seeds[random.nextInt(seeds.length)] = true;
			}
			int[] nearest = new NearestSeeds(seeds, columns, rows).find(Monitor.NONE);
			for (int at = 0; at < seeds.length; at++) {
				int best = Integer.MAX_VALUE;
				for (int seed = 0; seed < seeds.length; seed++) {
					best = seeds[seed] ? Math.min(best, square(at, seed, columns)) : best;
				}
				assertEquals(true, seeds[nearest[at]]);
				assertEquals(best, square(at, nearest[at], columns));
			}
		}
	}

	private static int square(int one, int other, int columns) {
		int x = one % columns - other % columns;
		int y = one / columns - other / columns;
		return x * x + y * y;
	}

	@Test
	void withoutSeedsThereIsNone() {
		assertEquals(true, Arrays.stream(new NearestSeeds(new boolean[12], 4, 3).find(Monitor.NONE)).allMatch(i -> i == -1));
	}
}
