package org.frisket.ui.bench.internal.looks;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.PreparedJob;

/**
 * Finds off the UI thread what cleaning took away of each element. A newer request calls off the one under way, and
 * what was known before stays until the next is done.
 */
final class CleaningJob extends Job {

	private final Display display;
	private final Consumer<Map<String, CleaningPicture>> client;
	private final AtomicReference<PreparedJob> latest = new AtomicReference<>();

	/** @param client told on the UI thread, by the ids of the elements */
	CleaningJob(Display display, Consumer<Map<String, CleaningPicture>> client) {
		super(Messages.CleaningJob_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** Nothing happens if this very job was asked for last. */
	void request(PreparedJob prepared) {
		if (prepared != null && latest.getAndSet(prepared) != prepared) {
			cancel();
			schedule();
		}
	}

	void close() {
		latest.set(null);
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		PreparedJob prepared = latest.get();
		if (prepared == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			Map<String, CleaningPicture> pictures = new HashMap<>();
			prepared.elements().forEach(element -> pictures.put(element.element().getId(),
					CleaningPicture.of(element, Tolerance.DEFAULT, monitor::isCanceled)));
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (latest.get() == prepared) {
						client.accept(pictures);
					}
				});
			}
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException e) {
			ILog.of(CleaningJob.class).error(Messages.CleaningJob_failed, e);
			return Status.OK_STATUS;
		}
	}
}
