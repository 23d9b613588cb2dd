package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

/** Against a comparison of all boxes with all others. */
class BoxSweepTest {

	private static final int ROUNDS = 300;
	private static final int STOP = 5;

	private record Pair(int later, int earlier) {
	}

	@Test
	void findsEveryPairOnceAndInOrder() {
		Random random = new Random(31);
		int found = 0;
		for (int round = 0; round < ROUNDS; round++) {
			List<Boxed> boxes = boxes(random);
			double reach = random.nextInt(3) * 0.25;
			List<Pair> expected = all(boxes, reach);
			assertEquals(expected, swept(boxes, reach, Integer.MAX_VALUE), "round " + round);
			found += expected.size();
		}
		assertTrue(found > ROUNDS, "pairs: " + found);
	}

	@Test
	void stopsWhenTold() {
		Random random = new Random(37);
		for (int round = 0; round < ROUNDS; round++) {
			List<Boxed> boxes = boxes(random);
			List<Pair> expected = all(boxes, 1);
			assertEquals(expected.subList(0, Math.min(STOP, expected.size())), swept(boxes, 1, STOP));
		}
	}

	@Test
	void noBoxesNoPairs() {
		assertEquals(List.of(), swept(List.of(), 1, STOP));
	}

	/** Some flat, some of no size, some as tall as all of the rest, many side by side on whole numbers. */
	private static List<Boxed> boxes(Random random) {
		List<Boxed> boxes = new ArrayList<>();
		double side = 1 + random.nextInt(30);
		boolean whole = random.nextBoolean();
		for (int i = random.nextInt(80); i > 0; i--) {
			Point start = new Point(random.nextDouble() * side, random.nextDouble() * side);
			Point end = start.plus(new Point(random.nextInt(3) * random.nextDouble(), random.nextInt(3) * random.nextDouble()));
			if (random.nextInt(20) == 0) {
				start = new Point(start.x(), 0);
				end = new Point(end.x(), side);
			}
			boxes.add(whole ? new Boxed(rounded(start), rounded(end)) : new Boxed(start, end));
		}
		boxes.sort(Comparator.comparingDouble(box -> box.minX));
		return boxes;
	}

	private static Point rounded(Point point) {
		return new Point(Math.rint(point.x()), Math.rint(point.y()));
	}

	private static List<Pair> all(List<Boxed> boxes, double reach) {
		List<Pair> pairs = new ArrayList<>();
		for (int i = 0; i < boxes.size(); i++) {
			for (int j = 0; j < i; j++) {
				Boxed a = boxes.get(i);
				Boxed b = boxes.get(j);
				if (b.maxX + reach >= a.minX && b.minY - reach <= a.maxY && a.minY <= b.maxY + reach) {
					pairs.add(new Pair(i, j));
				}
			}
		}
		return pairs;
	}

	private static List<Pair> swept(List<Boxed> boxes, double reach, int most) {
		List<Pair> pairs = new ArrayList<>();
		new BoxSweep(boxes, reach).run(Monitor.NONE, (later, earlier) -> {
			pairs.add(new Pair(later, earlier));
			return pairs.size() == most;
		});
		return pairs;
	}
}
