package org.frisket.ui.sheets.internal.sheets;

import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Sheet;
import org.frisket.sheets.LaidSheet;
import org.frisket.sheets.Offcuts;

/** The largest free piece of one sheet, looked for off the UI thread when it is asked about. */
final class Offcut {

	private final Display display;
	private final Runnable client;
	private Sheet sheet;
	private Optional<Bounds> found = Optional.empty();
	private Job job;

	/** @param client told on the UI thread when it is found */
	Offcut(Display display, Runnable client) {
		this.display = display;
		this.client = client;
	}

	/** Looks for it; what helps, and what there is no room for, is told when it is known. @param then told it as well */
	void seek(Sheet wanted, LaidSheet laid, java.util.function.Consumer<Optional<Bounds>> then) {
		forget();
		sheet = wanted;
		Job[] own = new Job[1];
		own[0] = new Job(Messages.Offcut_job) {
			@Override
			protected IStatus run(IProgressMonitor progress) {
				try {
					Optional<Bounds> largest = Offcuts.largest(laid, Tolerance.DEFAULT, progress::isCanceled)
							.filter(Offcuts::isWorthKeeping);
					if (!display.isDisposed()) {
						display.asyncExec(() -> {
							if (job == own[0]) {
								found = largest;
								client.run();
								then.accept(largest);
							}
						});
					}
					return Status.OK_STATUS;
				} catch (CancellationException e) {
					return Status.CANCEL_STATUS;
				}
			}
		};
		job = own[0];
		job.setSystem(true);
		job.schedule();
	}

	/** Of a sheet, as far as it is known; in mm from its upper left corner. */
	Optional<Bounds> of(Sheet wanted) {
		return wanted == sheet ? found : Optional.empty();
	}

	/** It is no longer true. */
	void forget() {
		if (job != null) {
			job.cancel();
			job = null;
		}
		sheet = null;
		found = Optional.empty();
	}
}
