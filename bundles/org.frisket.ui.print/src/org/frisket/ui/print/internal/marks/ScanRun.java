package org.frisket.ui.print.internal.marks;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.measure.ScannedSheet;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.UnreadablePictureException;

/** Looks for the marks of a sheet in a scan, off the UI thread. Only for the UI thread. */
final class ScanRun {

	/** As many as the picture of a sheet has on a large screen. */
	private static final int FLAT_PX = 1600;

	/** What is told, on the UI thread. */
	interface Client {

		/** @param percent of the search that is done; below 0 when it has ended */
		void scanning(int percent);

		/** @param flat the scan laid under the design; empty if too few marks were found */
		void found(MarkPlan plan, ScannedSheet scan, Optional<Grey> flat);

		/** Nothing came of it. @param message for people */
		void failed(String message);
	}

	/** One search. */
	private final class Search extends Job {

		private final Path file;
		private final MarkPlan plan;

		Search(Path file, MarkPlan plan) {
			super(NLS.bind(Messages.ScanRun_name, file.getFileName()));
			this.file = file;
			this.plan = plan;
		}

		@Override
		protected IStatus run(IProgressMonitor progress) {
			progress.beginTask(getName(), IProgressMonitor.UNKNOWN);
			Monitor monitor = new Monitor() {

				private int told = -1;

				@Override
				public boolean isCancelled() {
					return progress.isCanceled();
				}

				@Override
				public void worked(double fraction) {
					int percent = (int) (100 * fraction);
					if (percent != told) {
						told = percent;
						tell(() -> client.scanning(percent));
					}
				}
			};
			try {
				ScannedSheet scan = ScannedSheet.read(file, plan, monitor);
				Optional<Grey> flat = scan.flat(FLAT_PX, monitor);
				tell(() -> end(() -> client.found(plan, scan, flat)));
			} catch (CancellationException e) {
				tell(() -> end(() -> { }));
			} catch (UnreadablePictureException e) {
				tell(() -> end(() -> client.failed(e.getMessage())));
			} catch (RuntimeException | LinkageError e) {
				ILog.of(ScanRun.class).error(Messages.ScanRun_failed, e);
				tell(() -> end(() -> client.failed(Messages.ScanRun_failed)));
			} finally {
				progress.done();
			}
			return Status.OK_STATUS;
		}

		private void tell(Runnable news) {
			if (!display.isDisposed()) {
				display.asyncExec(() -> {
					if (search == this) {
						news.run();
					}
				});
			}
		}

		private void end(Runnable news) {
			search = null;
			client.scanning(-1);
			news.run();
		}
	}

	private final Display display;
	private final Client client;
	private Search search;

	ScanRun(Display display, Client client) {
		this.display = display;
		this.client = client;
	}

	boolean isUnderWay() {
		return search != null;
	}

	void begin(Path file, MarkPlan plan) {
		giveUp();
		search = new Search(file, plan);
		client.scanning(0);
		search.schedule();
	}

	/** Leaves everything as it was. */
	void giveUp() {
		if (search != null) {
			search.cancel();
			search = null;
			client.scanning(-1);
		}
	}
}
