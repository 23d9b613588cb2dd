package org.frisket.ui.sheets.internal.sheets;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Tolerance;
import org.frisket.impose.Budget;
import org.frisket.model.JobHome;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedJob;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.GuestFiles;
import org.frisket.sheets.imposing.JobImposer;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.sheets.imposing.Supply;
import org.frisket.studio.Studio;
import org.frisket.ui.bench.JobOnBench;

/**
 * Lays the parts of a job off the UI thread: the first layout is told at once, better ones as they come, until the time
 * is up or it is stopped, which keeps the best. It can be given up, too, and then nothing has happened. Only for the UI
 * thread.
 */
final class LayRun {

	/** In seconds: how long better layouts are looked for, at least and for each part, and at most. */
	private static final double LEAST = 1;
	private static final double EACH = 0.25;
	private static final double MOST = 30;

	/** What is told, on the UI thread. */
	interface Client {

		void begun();

		void better(SheetPlan plan);

		/** The best, to be made the job's. */
		void done(JobOnBench bench, LayingChoices choices, SheetPlan plan);

		/** Nothing came of it. @param message for people */
		void failed(String message);

		/** It has ended, however it did. */
		void ended();
	}

	/** One search. */
	private final class Search extends Job {

		private final JobOnBench bench;
		private final org.frisket.model.Job host;
		private final PreparedJob prepared;
		private final LayingChoices choices;
		private final Path file;
		private final AtomicReference<SheetPlan> latest = new AtomicReference<>();
		private volatile boolean stopped;

		Search(JobOnBench bench, LayingChoices choices, Path file) {
			super(Messages.LayRun_job);
			this.bench = bench;
			this.choices = choices;
			this.file = file;
			host = JobHome.copy(bench.job());
			prepared = bench.prepared().orElseThrow();
		}

		@Override
		protected IStatus run(IProgressMonitor progress) {
			progress.beginTask(Messages.LayRun_job, IProgressMonitor.UNKNOWN);
			try {
				JobPreparer preparer = new JobPreparer(FontLibraries.installed());
				Map<String, PreparedJob> jobs = GuestFiles.load(host, file).prepared(prepared, preparer,
						Tolerance.DEFAULT, progress::isCanceled);
				Supply supply = supply();
				int copies = jobs.values().stream().mapToInt(
						job -> job.job().getQuantity() * (int) job.elements().count()).sum();
				Budget budget = Budget.seconds(Math.min(MOST, LEAST + EACH * copies), choices.seed());
				SheetPlan best = JobImposer.lay(host, jobs, choices, supply, budget, this::better, Tolerance.DEFAULT,
						() -> stopped || progress.isCanceled());
				tell(() -> end(() -> client.done(bench, choices, best)));
			} catch (CancellationException e) {
				tell(() -> end(() -> { }));
			} catch (IOException | IllegalArgumentException e) {
				tell(() -> end(() -> client.failed(e.getMessage())));
			} catch (RuntimeException | LinkageError e) {
				ILog.of(LayRun.class).error(Messages.LayRun_failed, e);
				tell(() -> end(() -> client.failed(Messages.LayRun_failed)));
			} finally {
				progress.done();
			}
			return Status.OK_STATUS;
		}

		/** Those that come faster than they are shown are passed over. */
		private void better(SheetPlan plan) {
			if (latest.getAndSet(plan) == null) {
				tell(() -> client.better(latest.getAndSet(null)));
			}
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
			client.ended();
			news.run();
		}
	}

	private static Supply supply() throws IOException {
		return Supply.ofStudio(Studio.folder());
	}

	private final Display display;
	private final Client client;
	private Search search;

	LayRun(Display display, Client client) {
		this.display = display;
		this.client = client;
	}

	boolean isUnderWay() {
		return search != null;
	}

	/** @param file of the job; null if it has none */
	void begin(JobOnBench bench, LayingChoices choices, Path file) {
		giveUp();
		search = new Search(bench, choices, file);
		client.begun();
		search.schedule();
	}

	/** Ends the search; its best is taken. */
	void stop() {
		if (search != null) {
			search.stopped = true;
		}
	}

	/** Leaves everything as it was. */
	void giveUp() {
		if (search != null) {
			search.cancel();
			search = null;
			client.ended();
		}
	}
}
