package org.frisket.ui.material.internal;

import java.util.function.BooleanSupplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Sees every now and then, off the UI thread, whether another desk has changed something. */
final class ShelfWatch extends Job {

	private static final long PAUSE_MS = 1500;

	private final BooleanSupplier outOfDate;
	private final Runnable refresh;
	private volatile boolean on;

	ShelfWatch(BooleanSupplier outOfDate, Runnable refresh) {
		super(Messages.StudioShelf_reading);
		this.outOfDate = outOfDate;
		this.refresh = refresh;
		setSystem(true);
		setPriority(DECORATE);
	}

	void start() {
		on = true;
		schedule(PAUSE_MS);
	}

	@Override
	protected void canceling() {
		on = false;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		if (on && !monitor.isCanceled()) {
			if (outOfDate.getAsBoolean()) {
				refresh.run();
			}
			schedule(PAUSE_MS);
		}
		return Status.OK_STATUS;
	}
}
