package org.frisket.editing;

import java.util.Arrays;

import org.frisket.model.Job;
import org.frisket.model.JobContent;
import org.frisket.model.JobFile;
import org.frisket.model.UnwritableJobException;

/**
 * Takes a job over as its file, or the order book, has it now, locked or not. Undone, the job holds the very objects it held before, so that
 * edits made before can be undone further.
 */
public final class ReloadJob extends Edit {

	private final String name;
	private final Job job;
	/** Holds what the job does not hold just now. */
	private final Job other;
	private boolean begun;
	private boolean applied;

	/** @param read what was read from the file; it belongs to the edit from now on */
	public ReloadJob(Job job, Job read) {
		this(Messages.ReloadJob_name, job, read);
	}

	private ReloadJob(String name, Job job, Job read) {
		this.name = name;
		this.job = job;
		this.other = read;
	}

	/** As somebody else has put it into the order book. @param read belongs to the edit from now on */
	public static ReloadJob taken(Job job, Job read) {
		return new ReloadJob(Messages.ReloadJob_taken, job, read);
	}

	/** As it is when the work of two desks is put together. @param read belongs to the edit from now on */
	public static ReloadJob merged(Job job, Job read) {
		return new ReloadJob(Messages.ReloadJob_merged, job, read);
	}

	@Override
	public String name() {
		return name;
	}

	@Override
	public boolean canApply() {
		try {
			return job != other && !Arrays.equals(JobFile.toBytes(job), JobFile.toBytes(other));
		} catch (UnwritableJobException e) {
			// what could not be saved is no reason to keep the file from being read
			return true;
		}
	}

	@Override
	public void apply() {
		if (begun) {
			throw new IllegalStateException("'" + name() + "' was applied before");
		}
		if (!canApply()) {
			throw new IllegalStateException("'" + name() + "' cannot be applied");
		}
		begun = true;
		turn(false);
	}

	@Override
	public void undo() {
		turn(true);
	}

	@Override
	public void redo() {
		turn(false);
	}

	private void turn(boolean from) {
		if (!begun || applied != from) {
			throw new IllegalStateException("'" + name() + "' is " + (applied ? "applied" : "not applied"));
		}
		JobContent.swap(job, other);
		applied = !from;
	}
}
