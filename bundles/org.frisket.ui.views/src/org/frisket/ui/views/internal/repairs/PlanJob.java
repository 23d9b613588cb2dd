package org.frisket.ui.views.internal.repairs;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.Edit;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.prepare.extension.ContributionException;
import org.frisket.prepare.repair.RepairPlan;
import org.frisket.prepare.repair.RepairPlanner;
import org.frisket.prepare.repair.StepChoice;

/** Works out off the UI thread what would be repaired. A newer request calls off the one under way. */
final class PlanJob extends Job {

	private static final int PERCENT = 100;

	/**
	 * What is asked for.
	 *
	 * @param job      a copy, which nobody else changes
	 * @param outlines their ids
	 */
	record Request(org.frisket.model.Job job, List<String> outlines, List<StepChoice> steps, Tolerance tolerance) {
	}

	/** What the view is told, on the UI thread and of the newest request only. */
	interface Client {

		void working(int percent);

		/** @param tried the job as it would be */
		void planned(RepairPlan plan, org.frisket.model.Job tried);

		void failed(String message);
	}

	private final Display display;
	private final Client client;
	private final AtomicReference<Request> latest = new AtomicReference<>();

	PlanJob(Display display, Client client) {
		super(Messages.PlanJob_name);
		this.display = display;
		this.client = client;
		setSystem(true);
	}

	/**
	 * @param request null calls off what is under way
	 * @param delay   before it is begun, in ms; more may be typed meanwhile
	 */
	void request(Request request, int delay) {
		latest.set(request);
		cancel();
		if (request != null) {
			schedule(delay);
		}
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		Request request = latest.get();
		if (request == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			List<Outline> outlines = request.outlines.stream()
					.flatMap(id -> Jobs.element(request.job, id).stream()).map(Outline.class::cast).toList();
			RepairPlan plan = new RepairPlanner(request.steps, request.tolerance).plan(outlines,
					monitor(request, progress));
			plan.edit(request.job).ifPresent(Edit::apply);
			tell(request, () -> client.planned(plan, request.job));
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (ContributionException | IllegalArgumentException e) {
			tell(request, () -> client.failed(e.getMessage()));
		} catch (RuntimeException | LinkageError e) {
			ILog.of(PlanJob.class).error(Messages.PlanJob_failed, e);
			tell(request, () -> client.failed(Messages.PlanJob_failed));
		}
		return Status.OK_STATUS;
	}

	private Monitor monitor(Request request, IProgressMonitor progress) {
		return new Monitor() {

			private int told;

			@Override
			public boolean isCancelled() {
				return progress.isCanceled();
			}

			@Override
			public void worked(double fraction) {
				int percent = (int) (PERCENT * fraction);
				if (percent > told) {
					told = percent;
					tell(request, () -> client.working(percent));
				}
			}
		};
	}

	private void tell(Request request, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (latest.get() == request) {
					news.run();
				}
			});
		}
	}
}
