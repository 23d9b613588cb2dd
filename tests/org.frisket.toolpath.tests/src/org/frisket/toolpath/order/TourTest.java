package org.frisket.toolpath.order;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class TourTest {

	private static final Point ORIGIN = new Point(0, 0);

	/** Small ones against every order there is. */
	@Test
	void smallOnesAreBest() {
		SplittableRandom random = new SplittableRandom(1);
		for (int run = 0; run < 60; run++) {
			int n = 2 + random.nextInt(6);
			Stops stops = stops(random, n, run % 2 == 0, run % 3 == 0);
			boolean back = run % 4 < 2;
			Tour tour = Tour.of(stops, ORIGIN, back, 2000, 1, Monitor.NONE);
			assertKeeps(stops, tour);
			double best = best(stops, back, new boolean[n], 0, ORIGIN);
			assertTrue(tour.travel() <= best + 1e-9, "run " + run + ": " + tour.travel() + " for " + best);
			assertTrue(tour.travel() >= best - 1e-9);
		}
	}

	private static double best(Stops stops, boolean back, boolean[] made, int count, Point at) {
		if (count == stops.count) {
			return back ? Math.hypot(at.x(), at.y()) : 0;
		}
		double best = Double.POSITIVE_INFINITY;
		for (int i = 0; i < stops.count; i++) {
			if (made[i] || waits(stops, made, i)) {
				continue;
			}
			made[i] = true;
			Point in = new Point(stops.inX[i], stops.inY[i]);
			Point out = new Point(stops.outX[i], stops.outY[i]);
			best = Math.min(best, far(at, in) + best(stops, back, made, count + 1, out));
			best = Math.min(best, far(at, out) + best(stops, back, made, count + 1, in));
			made[i] = false;
		}
		return best;
	}

	private static boolean waits(Stops stops, boolean[] made, int stop) {
		for (int k = 0; k < stops.count; k++) {
			if (!made[k] && stops.after[k] == stop) {
				return true;
			}
		}
		return false;
	}

	private static double far(Point a, Point b) {
		return Math.hypot(a.x() - b.x(), a.y() - b.y());
	}

	/** Points on a circle: the best way runs round it. */
	@Test
	void roundACircle() {
		int n = 200;
		Point[] points = new Point[n];
		for (int i = 0; i < n; i++) {
			double a = 2 * Math.PI * (i * 77 % n) / n;
			points[i] = new Point(100 + 100 * Math.cos(a), 100 * Math.sin(a));
		}
		int[] none = new int[n];
		Arrays.fill(none, -1);
		Tour tour = Tour.of(new Stops(points, points, none), ORIGIN, true, 20_000, 1, Monitor.NONE);
		assertEquals(n * 200 * Math.sin(Math.PI / n), tour.travel(), 1e-6);
	}

	/** On a grid of even sides a tour of n steps is the shortest there is. */
	@Test
	void overAGrid() {
		int side = 20;
		Point[] points = new Point[side * side];
		for (int i = 0; i < points.length; i++) {
			points[i] = new Point(i % side, i / side);
		}
		int[] none = new int[points.length];
		Arrays.fill(none, -1);
		Tour tour = Tour.of(new Stops(points, points, none), ORIGIN, true, 100_000, 1, Monitor.NONE);
		assertTrue(tour.travel() <= 1.01 * points.length, "travel " + tour.travel());
	}

	@Test
	void keepsWhatHasToWait() {
		SplittableRandom random = new SplittableRandom(2);
		for (int run = 0; run < 30; run++) {
			Stops stops = stops(random, 5 + random.nextInt(300), true, true);
			Tour tour = Tour.of(stops, ORIGIN, run % 2 == 0, 3000, run, Monitor.NONE);
			assertKeeps(stops, tour);
			Tour nearest = Tour.nearest(stops, ORIGIN, run % 2 == 0);
			assertKeeps(stops, nearest);
			assertTrue(tour.travel() <= nearest.travel() + 1e-9);
		}
	}

	@Test
	void sameSeedSameTour() {
		Stops stops = stops(new SplittableRandom(3), 200, true, true);
		assertArrayEquals(Tour.of(stops, ORIGIN, true, 5000, 9, Monitor.NONE).order(),
				Tour.of(stops, ORIGIN, true, 5000, 9, Monitor.NONE).order());
	}

	@Test
	void nothingAndOne() {
		Stops none = new Stops(new Point[0], new Point[0], new int[0]);
		assertEquals(0, Tour.of(none, ORIGIN, true, 10, 1, Monitor.NONE).travel());
		Stops one = new Stops(new Point[] { new Point(3, 4) }, new Point[] { new Point(0, 2) }, new int[] { -1 });
		Tour tour = Tour.of(one, ORIGIN, false, 10, 1, Monitor.NONE);
		assertEquals(2, tour.travel(), 1e-12);
		assertTrue(tour.isTurned(0));
	}

	@Test
	void refusesWhatWaitsForEachOther() {
		Point[] two = { ORIGIN, ORIGIN };
		assertThrows(IllegalArgumentException.class, () -> new Stops(two, two, new int[] { 1, 0 }));
	}

	private static Stops stops(SplittableRandom random, int n, boolean open, boolean waiting) {
		Point[] in = new Point[n];
		Point[] out = new Point[n];
		int[] after = new int[n];
		for (int i = 0; i < n; i++) {
			in[i] = new Point(100 * random.nextDouble(), 100 * random.nextDouble());
			out[i] = open && random.nextBoolean() ? new Point(100 * random.nextDouble(), 100 * random.nextDouble()) : in[i];
			after[i] = waiting && i > 0 && random.nextInt(3) > 0 ? random.nextInt(i) : -1;
		}
		return new Stops(in, out, after);
	}

	private static void assertKeeps(Stops stops, Tour tour) {
		int[] order = tour.order();
		int[] place = new int[order.length];
		Arrays.fill(place, -1);
		for (int i = 0; i < order.length; i++) {
			assertEquals(-1, place[order[i]], "made twice");
			place[order[i]] = i;
		}
		for (int i = 0; i < order.length; i++) {
			assertTrue(stops.after[i] < 0 || place[i] < place[stops.after[i]], "too early: " + stops.after[i]);
		}
	}
}
