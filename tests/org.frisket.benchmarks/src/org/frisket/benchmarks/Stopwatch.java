package org.frisket.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/** Times of a computation after it has warmed up. */
final class Stopwatch {

	private static final int WARM_UPS = 40;
	private static final int ROUNDS = 31;
	private static final int FEW = 7;

	/** What is computed goes here, so that no computation can be left out. */
	static volatile Object sink;

	private Stopwatch() {
	}

	/** Median times in ms of several computations, run in turn so that noise meets all of them. */
	static double[] medians(Supplier<?>... computations) {
		return medians(WARM_UPS, ROUNDS, computations);
	}

	/** The same for computations that take long. */
	static double[] mediansOfFew(Supplier<?>... computations) {
		return medians(FEW, FEW, computations);
	}

	/**
	 * Times of the processor that this thread has spent, for computations that take longer than the machine is quiet.
	 *
	 * @param once whether they take so long that one time has to do, after another one to warm up
	 */
	static double[] cpu(boolean once, Supplier<?>... computations) {
		ThreadMXBean threads = ManagementFactory.getThreadMXBean();
		return medians(threads::getCurrentThreadCpuTime, once ? 1 : FEW, once ? 1 : FEW, computations);
	}

	private static double[] medians(int warmUps, int rounds, Supplier<?>... computations) {
		return medians(System::nanoTime, warmUps, rounds, computations);
	}

	private static double[] medians(LongSupplier nanoseconds, int warmUps, int rounds, Supplier<?>... computations) {
		for (int i = 0; i < warmUps; i++) {
			for (Supplier<?> computation : computations) {
				sink = computation.get();
			}
		}
		double[][] times = new double[computations.length][rounds];
		for (int round = 0; round < rounds; round++) {
			for (int i = 0; i < computations.length; i++) {
				long start = nanoseconds.getAsLong();
				sink = computations[i].get();
				times[i][round] = (nanoseconds.getAsLong() - start) / 1e6;
			}
		}
		double[] medians = new double[computations.length];
		for (int i = 0; i < medians.length; i++) {
			Arrays.sort(times[i]);
			medians[i] = times[i][rounds / 2];
		}
		return medians;
	}
}
