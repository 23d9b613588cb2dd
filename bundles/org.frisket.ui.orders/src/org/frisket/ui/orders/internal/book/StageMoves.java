package org.frisket.ui.orders.internal.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.commands.operations.AbstractOperation;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.work.JobStages;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.Makeready;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.studio.Studio;
import org.frisket.studio.StudioFolder;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreWatch;

/**
 * Jobs that are brought to another stage together, in the history of the workbench. What is refused stays where it is,
 * and the rest is done. Runs off the UI thread only.
 */
final class StageMoves extends AbstractOperation {

	/** A job that stayed where it is. @param reason for people */
	record Refused(Entry job, String reason) {
	}

	/** One change of a job's stage. */
	private interface Step {
		Entry of(Entry job) throws IOException, OrderException;
	}

	private final StudioFolder studio = Studio.folder();
	private final OrderBook book = new OrderBook(studio);
	private final JobStages stages = new JobStages(studio);
	private final Stage to;
	private final String remark;
	private List<Entry> jobs;
	private List<Refused> refused = List.of();

	StageMoves(String label, List<Entry> jobs, Stage to, String remark) {
		super(label);
		this.jobs = List.copyOf(jobs);
		this.to = to;
		this.remark = remark;
	}

	/** What was not done the last time. */
	List<Refused> refused() {
		return refused;
	}

	/** How many jobs it is about. */
	int size() {
		return jobs.size();
	}

	/** Whether nothing is left that undo could take back, or redo do again. */
	boolean isEmpty() {
		return jobs.isEmpty();
	}

	@Override
	public IStatus execute(IProgressMonitor monitor, IAdaptable info) {
		return run(monitor, job -> told(stages.move(job.number(), to, OrderDesk.person(), remark,
				() -> blocking(job))));
	}

	@Override
	public IStatus redo(IProgressMonitor monitor, IAdaptable info) {
		return run(monitor, job -> {
			if (!book.find(job.number()).since().equals(job.since())) {
				throw new OrderException(Messages.StageMoves_overtaken);
			}
			return told(stages.moveAnyway(job.number(), to, OrderDesk.person(), remark));
		});
	}

	@Override
	public IStatus undo(IProgressMonitor monitor, IAdaptable info) {
		return run(monitor, job -> book.undoStage(job.number(), job.since(), OrderDesk.person()));
	}

	private IStatus run(IProgressMonitor monitor, Step step) {
		List<Refused> not = new ArrayList<>();
		List<Entry> moved = new ArrayList<>();
		SubMonitor progress = SubMonitor.convert(monitor, jobs.size());
		try {
			for (Entry job : jobs) {
				if (progress.isCanceled()) {
					not.add(new Refused(job, Messages.StageMoves_calledOff));
					continue;
				}
				progress.subTask(NLS.bind(Messages.StageMoves_job, job.number(), job.title()));
				try {
					moved.add(step.of(job));
				} catch (StageRuleException against) {
					not.add(new Refused(job, against.reason()));
				} catch (IOException | OrderException e) {
					not.add(new Refused(job, String.valueOf(e.getMessage())));
				}
				progress.worked(1);
			}
		} finally {
			StoreWatch.get().changed();
		}
		jobs = List.copyOf(moved);
		refused = List.copyOf(not);
		return Status.OK_STATUS;
	}

	/** The job has moved; what was not done besides is for the log. */
	private static Entry told(JobStages.Moved moved) {
		moved.notes().forEach(ILog.of(StageMoves.class)::warn);
		return moved.entry();
	}

	/** What cannot be worked out cannot be cut either. */
	private List<String> blocking(Entry job) {
		try {
			Tolerance tolerance = Tolerance.DEFAULT;
			return Makeready.findings(
					new JobPreparer(FontLibraries.installed())
					.prepare(book.open(job.number()).job(), tolerance, Monitor.NONE),
					LayerLimits.byStock(StockLimits.ofStudio()), tolerance, Monitor.NONE).stream()
					.filter(Finding::isBlocking).map(Finding::message)
					.toList();
		} catch (IOException | OrderException | IllegalArgumentException e) {
			return List.of(String.valueOf(e.getMessage()));
		}
	}
}
