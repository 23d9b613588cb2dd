package org.frisket.benchmarks;

import java.util.Arrays;
import java.util.function.Supplier;

/** Times of a computation after it has warmed up. */
final class Stopwatch {

	private static final int WARM_UPS = 40;
	private static final int ROUNDS = 31;

	/** What is computed goes here, so that no computation can be left out. */
	static volatile Object sink;

	private Stopwatch() {
	}

	/** Median times in ms of several computations, run in turn so that noise meets all of them. */
	static double[] medians(Supplier<?>... computations) {
		for (int i = 0; i < WARM_UPS; i++) {
			for (Supplier<?> computation : computations) {
				sink = computation.get();
			}
		}
		double[][] times = new double[computations.length][ROUNDS];
		for (int round = 0; round < ROUNDS; round++) {
			for (int i = 0; i < computations.length; i++) {
				long start = System.nanoTime();
				sink = computations[i].get();
				times[i][round] = (System.nanoTime() - start) / 1e6;
			}
		}
		double[] medians = new double[computations.length];
		for (int i = 0; i < medians.length; i++) {
			Arrays.sort(times[i]);
			medians[i] = times[i][ROUNDS / 2];
		}
		return medians;
	}
}
