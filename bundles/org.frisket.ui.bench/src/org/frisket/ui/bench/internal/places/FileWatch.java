package org.frisket.ui.bench.internal.places;

import java.util.List;

import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.ui.bench.PlacedBench;
import org.frisket.ui.bench.PlacedBench.Choice;
import org.frisket.ui.bench.internal.files.FileStamp;

/**
 * Looks whether another program has changed or removed the file of an open job, whenever the user comes back to it, and
 * says so with what can be done.
 */
final class FileWatch {

	private final FilePlace place;
	private final PlacedBench bench;
	private OutsideChange told = OutsideChange.NONE;

	FileWatch(FilePlace place, PlacedBench bench) {
		this.place = place;
		this.bench = bench;
	}

	/** Off the UI thread: a folder on the network may take its time to answer. */
	void look() {
		String mark = bench.mark();
		Display display = bench.shell().getDisplay();
		Job.createSystem(Messages.FileWatch_job, (ICoreRunnable) monitor -> {
			FileStamp now = FileStamp.of(place.path());
			if (!display.isDisposed()) {
				display.asyncExec(() -> found(mark, now));
			}
		}).schedule();
	}

	private void found(String mark, FileStamp now) {
		// saved meanwhile, or closed: it no longer holds
		if (bench.isClosed() || !mark.equals(bench.mark())) {
			return;
		}
		OutsideChange change = OutsideChange.between(mark, now);
		if (change != told) {
			told = change;
			tell(change, now.text());
		}
	}

	private void tell(OutsideChange change, String now) {
		switch (change) {
		case NONE -> bench.hush();
		case CHANGED -> bench.tell(
				NLS.bind(bench.isDirty() ? Messages.FileWatch_changedBoth : Messages.FileWatch_changed, place.path()),
				List.of(new Choice(Messages.FileWatch_reload, () -> settle(bench::reload)), keep(now)));
		case REMOVED -> bench.tell(NLS.bind(Messages.FileWatch_removed, place.path()),
				List.of(new Choice(Messages.FileWatch_saveAgain, () -> settle(bench::save)), keep(now)));
		}
	}

	private Choice keep(String now) {
		return new Choice(Messages.FileWatch_keep, () -> settle(() -> bench.keepDespite(now)));
	}

	/** What is found from now on is told again. */
	private void settle(Runnable action) {
		told = OutsideChange.NONE;
		action.run();
	}
}
