package org.frisket.benchmarks;

import java.util.Arrays;
import java.util.SplittableRandom;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.order.Stops;
import org.frisket.toolpath.order.Tour;

/**
 * The way between contours spread by chance, beside that by nearest neighbours and the mean length of best tours through as
 * many such places, as a share of √(n A): 0.7764 of 100, 0.7313 of 1,000, 0.7168 of 10,000 (Johnson, McGeoch and Rothberg,
 * Asymptotic experimental analysis for the Held-Karp traveling salesman bound, 1996; from memory).
 */
final class TourBenchmark {

	private static final int[] COUNTS = { 100, 1000, 10_000 };
	private static final double[] SHARES = { 0.7764, 0.7313, 0.7168 };
	private static final double SIDE = 1000;

	private TourBenchmark() {
	}

	static void run() {
		for (int each = 0; each < COUNTS.length; each++) {
			int n = COUNTS[each];
			SplittableRandom random = new SplittableRandom(n);
			Point[] places = new Point[n];
			for (int i = 0; i < n; i++) {
				places[i] = new Point(SIDE * random.nextDouble(), SIDE * random.nextDouble());
			}
			int[] none = new int[n];
			Arrays.fill(none, -1);
			Stops stops = new Stops(places, places, none);
			double best = SHARES[each] * SIDE * Math.sqrt(n);
			long begun = System.nanoTime();
			double nearest = Tour.nearest(stops, places[0], true).travel();
			double nearestSeconds = (System.nanoTime() - begun) / 1e9;
			long second = System.nanoTime();
			Monitor oneSecond = () -> System.nanoTime() - second > 1_000_000_000L;
			double ours = Tour.of(stops, places[0], true, Long.MAX_VALUE, 1, oneSecond).travel();
			System.out.printf(
					"way between %d contours: %.3f of the expected best after 1 s, %.3f of nearest neighbours, which take %.3f s%n",
					n, ours / best, ours / nearest, nearestSeconds);
		}
	}
}
