package org.frisket.ui.views.internal.typecase;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.typography.index.FontIndex;
import org.frisket.typography.index.FontIndexer;
import org.frisket.typography.index.IndexedFont;
import org.frisket.typography.source.FontSource;

/**
 * What is known of the fonts at hand. They are gone through in the background, which shows as progress and can be
 * stopped; what is known so far can be used at once. All but the going through is for the UI thread.
 */
public final class FontShelf {

	private static final int TICKS = 1000;
	/** The screen is told after so many fonts, for each telling sorts and filters them all. */
	private static final int TOLD_AFTER = 40;

	private final Display display;
	private final List<? extends FontSource> sources;
	private final FontIndexer indexer;
	private final Runnable changed;
	private final List<IndexedFont> found = new ArrayList<>();
	private FontIndex index = new FontIndex(List.of(), List.of());
	private Job job;
	private double progress;
	private boolean complete;

	/** @param changed run on the UI thread when more is known, or less is to come */
	public FontShelf(Display display, List<? extends FontSource> sources, FontIndexer indexer, Runnable changed) {
		this.display = display;
		this.sources = sources;
		this.indexer = indexer;
		this.changed = changed;
	}

	/** Goes through all fonts, again if need be. */
	public void read() {
		cancel();
		found.clear();
		progress = 0;
		complete = false;
		job = new Job(Messages.FontShelf_job) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				return go(this, monitor);
			}
		};
		job.setPriority(Job.LONG);
		job.schedule();
	}

	private IStatus go(Job mine, IProgressMonitor monitor) {
		monitor.beginTask(Messages.FontShelf_job, TICKS);
		List<IndexedFont> fresh = new ArrayList<>();
		double[] done = new double[1];
		Monitor watched = new Monitor() {

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				monitor.worked((int) (TICKS * fraction) - (int) (TICKS * done[0]));
				done[0] = fraction;
			}
		};
		try {
			FontIndex whole = indexer.index(sources, watched, font -> {
				fresh.add(font);
				if (fresh.size() >= TOLD_AFTER) {
					List<IndexedFont> some = List.copyOf(fresh);
					fresh.clear();
					tell(mine, () -> add(some, done[0]));
				}
			});
			tell(mine, () -> {
				index = whole;
				complete = true;
				job = null;
			});
			return Status.OK_STATUS;
		} catch (CancellationException stopped) {
			List<IndexedFont> rest = List.copyOf(fresh);
			tell(mine, () -> {
				add(rest, done[0]);
				job = null;
			});
			return Status.CANCEL_STATUS;
		}
	}

	private void add(List<IndexedFont> fonts, double fraction) {
		found.addAll(fonts);
		progress = fraction;
		index = new FontIndex(found, List.of());
	}

	private void tell(Job from, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (from == job) {
					news.run();
					changed.run();
				}
			});
		}
	}

	/** Stops going through them; what was found stays. */
	public void cancel() {
		if (job != null) {
			job.cancel();
		}
	}

	/** Tells nobody any more. */
	public void close() {
		Job last = job;
		job = null;
		if (last != null) {
			last.cancel();
		}
	}

	/** As far as it goes by now. */
	public FontIndex index() {
		return index;
	}

	public boolean isReading() {
		return job != null;
	}

	/** Whether all fonts were gone through. */
	public boolean isComplete() {
		return complete;
	}

	/** From 0 to 1. */
	public double progress() {
		return progress;
	}
}
