package org.frisket.ui.views.internal.typecase;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.page.chart.ChartFiles;
import org.frisket.page.chart.ChartPages;

/** Writes a chart, off the UI thread, with progress and cancel. */
final class ChartJob extends Job {

	private static final int TICKS = 1000;

	private final ChartPages pages;
	private final Path target;
	private final Consumer<String> told;

	/** @param told how it ended, on the job's own thread */
	ChartJob(ChartPages pages, Path target, Consumer<String> told) {
		super(NLS.bind(Messages.ChartJob_name, pages.title()));
		this.pages = pages;
		this.target = target;
		this.told = told;
		setUser(true);
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		progress.beginTask(getName(), TICKS);
		try {
			List<Path> files = ChartFiles.write(pages, target, monitor(progress));
			told.accept(files.size() == 1 ? NLS.bind(Messages.ChartJob_written, files.get(0))
					: NLS.bind(Messages.ChartJob_writtenSeveral, files.size(), files.get(0)));
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			told.accept(Messages.ChartJob_cancelled);
			return Status.CANCEL_STATUS;
		} catch (IOException e) {
			told.accept(NLS.bind(Messages.ChartJob_failed, e.getMessage()));
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ChartJob.class).error(e.toString(), e);
			told.accept(NLS.bind(Messages.ChartJob_failed, e));
		}
		return Status.OK_STATUS;
	}

	private static Monitor monitor(IProgressMonitor progress) {
		return new Monitor() {

			private int done;

			@Override
			public boolean isCancelled() {
				return progress.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				int now = (int) (TICKS * fraction);
				progress.worked(now - done);
				done = now;
			}
		};
	}
}
