package org.frisket.ui.bench.internal.export;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.frisket.export.AbandonedExportException;
import org.frisket.export.drive.Drive;
import org.frisket.export.drive.Drives;
import org.frisket.export.plan.HandoffPlan;
import org.frisket.export.plan.HandoffReport;
import org.frisket.export.plan.StudioWorkshop;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;
import org.frisket.studio.Studio;

/** Works a job through and writes it, off the UI thread. */
final class ExportJob extends Job {

	/** What is told, on the job's own thread; one of the four after the first two ends it. */
	interface Client {

		/** @param fraction how much is done, from 0 to 1 */
		void progress(double fraction);

		boolean isCancelled();

		/** @param drive that the files are on, settled; empty if they are on none */
		void exported(List<Path> files, Optional<Drive> drive);

		/** Nothing was written: there are findings that the user has not accepted. */
		void blocked(List<Finding> blocking);

		/** Not all was written. */
		void failed(String message);

		/** @param deaf the bundle whose exporter goes on all the same, to no effect; empty if it stopped */
		void cancelled(List<Path> files, Optional<String> deaf);
	}

	private static final double PREPARED = 0.4;
	private static final double CHECKED = 0.5;

	private final org.frisket.model.Job snapshot;
	private final Path file;
	private final ExportRequest request;
	private final Client client;

	/**
	 * @param snapshot a copy that nobody changes any more
	 * @param file     where the job itself is, so that its guests are found; null if it has none yet
	 */
	ExportJob(org.frisket.model.Job snapshot, Path file, ExportRequest request, Client client) {
		super(NLS.bind(Messages.ExportJob_name, request.place()));
		this.snapshot = snapshot;
		this.file = file;
		this.request = request;
		this.client = client;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		try {
			write(monitor);
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			client.cancelled(List.of(), Optional.empty());
			return Status.CANCEL_STATUS;
		} catch (IOException | IllegalArgumentException e) {
			client.failed(e.getMessage());
		} catch (RuntimeException | LinkageError e) {
			ILog.of(ExportJob.class).error(e.toString(), e);
			client.failed(NLS.bind(Messages.ExportJob_failed, e));
		}
		return Status.OK_STATUS;
	}

	private void write(IProgressMonitor monitor) throws IOException {
		client.progress(0);
		JobPreparer preparer = new JobPreparer(FontLibraries.installed());
		PreparedJob prepared = preparer.prepare(snapshot, Tolerance.DEFAULT, part(monitor, 0, PREPARED));
		Map<String, PreparedJob> all = GuestFiles.load(snapshot, file).prepared(prepared, preparer, Tolerance.DEFAULT,
				part(monitor, PREPARED, PREPARED));
		HandoffPlan plan = HandoffPlan.of(request.handoff(), snapshot, all,
				new StudioWorkshop(Studio.folder(), request.machine()), Tolerance.DEFAULT, part(monitor, PREPARED, PREPARED));
		if (!request.anyway()) {
			List<Finding> blocking = Stream.concat(Makeready
					.findings(prepared, LayerLimits.byStock(StockLimits.ofStudio()), Tolerance.DEFAULT,
							part(monitor, PREPARED, CHECKED))
					.stream().filter(Finding::isBlocking), plan.blocking()).toList();
			if (!blocking.isEmpty()) {
				client.blocked(blocking);
				return;
			}
		}
		tell(plan.write(part(monitor, CHECKED, 1)));
	}

	private void tell(HandoffReport report) throws IOException {
		List<Path> written = report.written();
		if (report.calledOff() != null) {
			client.cancelled(written, report.calledOff() instanceof AbandonedExportException left ? Optional.of(left.bundle())
					: Optional.empty());
			return;
		}
		Optional<Drive> drive = Drives.ofThisComputer().holding(request.handoff().destination().path());
		if (drive.isPresent()) {
			drive.get().settle(written);
		}
		List<HandoffReport.Outcome> failed = report.failed();
		if (failed.isEmpty()) {
			client.exported(written, drive);
			return;
		}
		failed.stream().map(HandoffReport.Outcome::failure).filter(ContributionException.class::isInstance)
				.forEach(failure -> ILog.of(ExportJob.class).error(failure.getMessage(), failure));
		client.failed(ExportNews.failed(report));
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
