package org.frisket.ui.bench;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.frisket.model.Job;

/** Where each job was written to last since the program was started. Only for the UI thread. */
public final class LastExports {

	private static final Map<String, Path> FILES = new HashMap<>();
	private static final List<Runnable> WATCHERS = new CopyOnWriteArrayList<>();

	private LastExports() {
	}

	/** Empty if it was not. */
	public static Optional<Path> of(Job job) {
		return Optional.ofNullable(FILES.get(job.getId()));
	}

	/** A job was written. */
	public static void add(Job job, Path file) {
		FILES.put(job.getId(), file);
		WATCHERS.forEach(Runnable::run);
	}

	/**
	 * Has somebody told when a job was written.
	 *
	 * @return ends it
	 */
	public static Runnable watch(Runnable changed) {
		WATCHERS.add(changed);
		return () -> WATCHERS.remove(changed);
	}
}
