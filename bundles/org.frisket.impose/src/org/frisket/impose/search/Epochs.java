package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Searchers side by side, each on a thread of its own; they meet after each epoch. */
final class Epochs implements AutoCloseable {

	/** How many there are, whatever the machine has: more cores must not lead to another layout. */
	static final int SEARCHERS = 2;
	/** Steps of one searcher between two meetings. */
	static final long STEPS = 3_000_000;

	private final ExecutorService threads = Executors.newFixedThreadPool(SEARCHERS, task -> {
		Thread thread = new Thread(task, "imposition");
		thread.setDaemon(true);
		return thread;
	});

	/** Runs all and waits for the last. */
	<T> List<T> meet(List<Callable<T>> searchers) {
		List<T> results = new ArrayList<>();
		try {
			for (Future<T> done : threads.invokeAll(searchers)) {
				results.add(done.get());
			}
		} catch (InterruptedException stopped) {
			Thread.currentThread().interrupt();
			throw new CancellationException();
		} catch (ExecutionException failed) {
			throw failed.getCause() instanceof RuntimeException bug ? bug : new IllegalStateException(failed.getCause());
		}
		return results;
	}

	@Override
	public void close() {
		threads.shutdownNow();
	}
}
