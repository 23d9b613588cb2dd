package org.frisket.ui.bench.internal.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.frisket.export.ExportTask;
import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.extension.ContributionException;

/** Works a job through and writes it, off the UI thread. */
final class ExportJob extends Job {

	/** What is told, on the job's own thread; one of the four ends it. */
	interface Client {

		/** @param fraction how much is done, from 0 to 1 */
		void progress(double fraction);

		boolean isCancelled();

		void exported(Path target);

		/** Nothing was written: there are findings that the user has not accepted. */
		void blocked(List<Finding> blocking);

		/** Nothing was written. */
		void failed(String message);

		void cancelled();
	}

	private static final double PREPARED = 0.4;
	private static final double CHECKED = 0.5;

	private final org.frisket.model.Job snapshot;
	private final ExportRequest request;
	private final Client client;

	/** @param snapshot a copy that nobody changes any more */
	ExportJob(org.frisket.model.Job snapshot, ExportRequest request, Client client) {
		super(NLS.bind(Messages.ExportJob_name, request.target().getFileName()));
		this.snapshot = snapshot;
		this.request = request;
		this.client = client;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			write(monitor);
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			client.cancelled();
			return Status.CANCEL_STATUS;
		} catch (ContributionException e) {
			ILog.of(ExportJob.class).error(e.getMessage(), e);
			client.failed(e.getMessage());
		} catch (IOException | IllegalArgumentException e) {
			client.failed(e.getMessage());
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ExportJob.class).error(e.toString(), e);
			client.failed(NLS.bind(Messages.ExportJob_failed, e));
		}
		return Status.OK_STATUS;
	}

	private void write(IProgressMonitor monitor) throws IOException, ContributionException {
		client.progress(0);
		PreparedJob prepared = new JobPreparer(FontLibraries.installed()).prepare(snapshot, Tolerance.DEFAULT,
				part(monitor, 0, PREPARED));
		if (!request.anyway()) {
			List<Finding> blocking = Makeready
					.findings(prepared, LayerLimits.byStock(StockLimits.ofStudio()), Tolerance.DEFAULT,
							part(monitor, PREPARED, CHECKED))
					.stream()
					.filter(Finding::isBlocking).toList();
			if (!blocking.isEmpty()) {
				client.blocked(blocking);
				return;
			}
		}
		new ExportTask(request.format()).write(Handoff.of(prepared), request.options(), part(monitor, CHECKED, 1),
				request.target());
		client.exported(request.target());
	}

	private Monitor part(IProgressMonitor monitor, double from, double to) {
		return new Monitor() {

			@Override
			public boolean isCancelled() {
				return monitor.isCanceled() || client.isCancelled();
			}

			@Override
			public void worked(double fraction) {
				client.progress(from + (to - from) * fraction);
			}
		};
	}
}
