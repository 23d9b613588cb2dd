package org.frisket.ui.sheets.internal.sheets;

import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.Map;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.JobHome;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;
import org.frisket.ui.bench.Bench;
import org.frisket.ui.bench.JobOnBench;
import org.frisket.ui.views.SheetsNote;

/** How far the sheets of the job on a bench are, worked out anew off the UI thread whenever its picture is another. */
final class BenchSheets implements SheetsNote, JobOnBench.Listener {

	private final JobOnBench bench;
	private final Display display = Display.getCurrent();
	private Runnable changed = () -> { };
	private SheetsSummary summary;
	private Job job;
	private boolean upToDate;

	BenchSheets(JobOnBench bench) {
		this.bench = bench;
	}

	@Override
	public Runnable watch(Runnable listener) {
		changed = listener;
		bench.addListener(this);
		pictureChanged();
		return () -> {
			bench.removeListener(this);
			changed = () -> { };
			callOff();
		};
	}

	private void callOff() {
		if (job != null) {
			job.cancel();
			job = null;
		}
	}

	@Override
	public void jobChanged() {
		callOff();
		upToDate = false;
	}

	@Override
	public void pictureChanged() {
		callOff();
		if (bench.job().getSheets().isEmpty() || bench.prepared().isEmpty()) {
			summary = null;
			upToDate = bench.isUpToDate();
			return;
		}
		org.frisket.model.Job copy = JobHome.copy(bench.job());
		PreparedJob prepared = bench.prepared().get();
		Path file = Bench.fileOf(bench);
		Job[] own = new Job[1];
		own[0] = new Job(Messages.ReadJob_name) {
			@Override
			protected IStatus run(IProgressMonitor progress) {
				try {
					SheetsSummary made = summary(copy, prepared, file, progress::isCanceled);
					if (!display.isDisposed()) {
						display.asyncExec(() -> made(own[0], made));
					}
				} catch (CancellationException e) {
					return Status.CANCEL_STATUS;
				} catch (RuntimeException | LinkageError e) {
					ILog.of(BenchSheets.class).error(Messages.ReadJob_failed, e);
				}
				return Status.OK_STATUS;
			}
		};
		job = own[0];
		job.setSystem(true);
		job.setPriority(Job.DECORATE);
		job.schedule();
	}

	private static SheetsSummary summary(org.frisket.model.Job host, PreparedJob prepared, Path file, Monitor monitor) {
		Map<String, PreparedJob> jobs = GuestFiles.load(host, file).prepared(prepared,
				new JobPreparer(FontLibraries.installed()), Tolerance.DEFAULT, monitor);
		return SheetsSummary.of(host, jobs, Tolerance.DEFAULT, monitor);
	}

	private void made(Job by, SheetsSummary made) {
		if (job == by) {
			summary = made;
			upToDate = bench.isUpToDate();
			changed.run();
		}
	}

	@Override
	public boolean isUpToDate() {
		return upToDate;
	}

	@Override
	public String words() {
		int sheets = bench.job().getSheets().size();
		if (sheets == 0 || summary == null) {
			return ""; //$NON-NLS-1$
		}
		if (summary.missing() > 0) {
			return Messages.BenchSheets_stale;
		}
		if (summary.unlaid() > 0) {
			return NLS.bind(summary.unlaid() == 1 ? Messages.BenchSheets_oneUnlaid : Messages.BenchSheets_unlaid,
					summary.unlaid());
		}
		String share = NumberFormat.getPercentInstance().format(summary.utilisation());
		return sheets == 1 ? NLS.bind(Messages.BenchSheets_one, share)
				: NLS.bind(Messages.BenchSheets_sheets, sheets, share);
	}
}
