package org.frisket.ui.material.internal.runs;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.prepare.LineWork;
import org.frisket.prepare.PreparedJob;
import org.frisket.ui.bench.JobOnBench;

/** Has the lines of the job on a bench measured off the UI thread, as soon as the job is worked through. */
final class LineCount implements JobOnBench.Listener {

	private final Display display = Display.getCurrent();
	private final JobOnBench bench;
	private final Consumer<List<LineWork>> counted;
	private Job asked;

	/** @param counted told once, on the UI thread */
	LineCount(JobOnBench bench, Consumer<List<LineWork>> counted) {
		this.bench = bench;
		this.counted = counted;
		bench.addListener(this);
		pictureChanged();
	}

	@Override
	public void pictureChanged() {
		if (asked == null && bench.isUpToDate()) {
			bench.prepared().ifPresent(this::count);
		}
	}

	private void count(PreparedJob prepared) {
		asked = new Job(Messages.LineCount_name) {
			@Override
			protected IStatus run(IProgressMonitor monitor) {
				List<LineWork> works = LineWork.of(prepared);
				if (!monitor.isCanceled() && !display.isDisposed()) {
					display.asyncExec(() -> {
						if (!monitor.isCanceled()) {
							counted.accept(works);
						}
					});
				}
				return Status.OK_STATUS;
			}
		};
		asked.setSystem(true);
		asked.schedule();
	}

	void stop() {
		bench.removeListener(this);
		if (asked != null) {
			asked.cancel();
		}
	}
}
