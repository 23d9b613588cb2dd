package org.frisket.model;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Where the file of a job is, so that what the job only refers to is found beside it. It is no part of the job: it is not
 * saved, and a copy has it only by {@link #copy}.
 */
public final class JobHome extends AdapterImpl {

	private final Path file;

	private JobHome(Path file) {
		this.file = file;
	}

	/** The file that a job was read from or saved to; empty for one that was in no file yet. */
	public static Optional<Path> of(Job job) {
		return job == null ? Optional.empty()
				: Optional.ofNullable((JobHome) EcoreUtil.getExistingAdapter(job, JobHome.class)).map(home -> home.file);
	}

	/** @param file null for none */
	public static void set(Job job, Path file) {
		job.eAdapters().removeIf(JobHome.class::isInstance);
		if (file != null) {
			job.eAdapters().add(new JobHome(file.toAbsolutePath().normalize()));
		}
	}

	/** A copy that refers to the same files. */
	public static Job copy(Job job) {
		Job copy = EcoreUtil.copy(job);
		set(copy, of(job).orElse(null));
		return copy;
	}

	@Override
	public boolean isAdapterForType(Object type) {
		return type == JobHome.class;
	}
}
