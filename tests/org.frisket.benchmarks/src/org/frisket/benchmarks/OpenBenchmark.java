package org.frisket.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.model.Job;
import org.frisket.model.JobFile;

/** Opening a large job, and what two hundred openings leave in the heap. */
final class OpenBenchmark {

	private static final int LARGE = 5000;
	private static final int ROUNDS = 5;
	private static final int EDITORS = 200;

	private OpenBenchmark() {
	}

	static Void run() throws Exception {
		Path large = file(DragBenchmark.job(LARGE));
		Path small = file(DragBenchmark.job(1));
		double[] largeMs = new double[ROUNDS];
		double[] smallMs = new double[ROUNDS];
		for (int i = 0; i < ROUNDS; i++) {
			largeMs[i] = open(large);
			smallMs[i] = open(small);
		}
		double one = BenchWindow.spread(smallMs)[0];
		double many = BenchWindow.spread(largeMs)[0];
		System.out.printf("open a job of %d elements until it is shown: %.0f ms; %.1f times that of one element (%.0f ms)%n", LARGE,
				many, many / one, one);
		double before = heap();
		for (int i = 0; i < EDITORS; i++) {
			open(small);
		}
		double after = heap();
		System.out.printf("heap after %d editors were opened and closed: %.1f MB; %.2f times that before (%.1f MB)%n", EDITORS, after,
				after / before, before);
		return null;
	}

	private static Path file(Job job) throws Exception {
		Path file = Files.createTempFile("benchmark", JobFile.ENDING);
		JobFile.save(job, file);
		file.toFile().deleteOnExit();
		return file;
	}

	private static double open(Path file) throws Exception {
		long start = System.nanoTime();
		BenchWindow.open(file);
		double ms = (System.nanoTime() - start) / 1e6;
		BenchWindow.page().closeAllEditors(false);
		return ms;
	}

	/** Used heap in MB, once what nobody holds is gone. */
	private static double heap() {
		for (int i = 0; i < 3; i++) {
			BenchWindow.settle();
			System.gc();
		}
		Runtime runtime = Runtime.getRuntime();
		return (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
	}
}
