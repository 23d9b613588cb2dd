package org.frisket.benchmarks;

import java.util.Arrays;
import java.util.SplittableRandom;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.order.Stops;
import org.frisket.toolpath.order.Tour;

/**
 * The way between contours spread by chance, beside that by nearest neighbours and the length that best tours of many such
 * places come to, 0.7124 √(n A) (1 + 0.33 / n) (Johnson and McGeoch 1997; from memory).
 */
final class TourBenchmark {

	private static final double CONSTANT = 0.7124;
	private static final double SMALL = 0.33;
	private static final double SIDE = 1000;

	private TourBenchmark() {
	}

	static void run() {
		for (int n : new int[] { 100, 1000, 10_000 }) {
			SplittableRandom random = new SplittableRandom(n);
			Point[] places = new Point[n];
			for (int i = 0; i < n; i++) {
				places[i] = new Point(SIDE * random.nextDouble(), SIDE * random.nextDouble());
			}
			int[] none = new int[n];
			Arrays.fill(none, -1);
			Stops stops = new Stops(places, places, none);
			double best = CONSTANT * SIDE * Math.sqrt(n) * (1 + SMALL / n);
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
