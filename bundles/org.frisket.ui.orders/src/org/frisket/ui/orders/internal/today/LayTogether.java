package org.frisket.ui.orders.internal.today;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.impose.Budget;
import org.frisket.orders.OrderException;
import org.frisket.orders.stages.StageRuleException;
import org.frisket.orders.work.Gang;
import org.frisket.orders.work.PlannedRun;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.OrderDesk;
import org.frisket.ui.studio.StoreWatch;

/** Lays jobs together off the UI thread and keeps that as a run. Called off, it keeps nothing. */
final class LayTogether extends Job {

	/** As long is looked for a better layout; it can be laid anew on the bench. */
	private static final double SECONDS = 5;

	/** Told on the UI thread what came of it. */
	interface Client {

		void laid(PlannedRun run);

		/** A rule of the studio is against it. */
		void ruledOut(String why);

		void refused(String why);
	}

	private final List<Long> numbers;
	private final boolean anyway;
	private final Client client;
	private final Display display = Display.getCurrent();

	LayTogether(List<Long> numbers, boolean anyway, Client client) {
		super(Messages.LayTogether_name);
		this.numbers = numbers;
		this.anyway = anyway;
		this.client = client;
		setUser(true);
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		progress.beginTask(Messages.LayTogether_name, IProgressMonitor.UNKNOWN);
		try {
			Gang gang = new Gang(Studio.folder(), Clock.systemUTC(), new JobPreparer(FontLibraries.installed()),
					LayerLimits.byStock(StockLimits.ofStudio()));
			LayingChoices choices = LayingChoices.of(null);
			Gang.Laid laid = gang.lay(numbers, choices, Budget.seconds(SECONDS, choices.seed()),
					plan -> progress.subTask(NLS.bind(Messages.LayTogether_best, plan.sheets().size())),
					progress::isCanceled);
			if (progress.isCanceled()) {
				return Status.CANCEL_STATUS;
			}
			PlannedRun run = gang.keep(laid, OrderDesk.person(), anyway);
			StoreWatch.get().changed();
			tell(() -> client.laid(run));
		} catch (CancellationException calledOff) {
			return Status.CANCEL_STATUS;
		} catch (StageRuleException against) {
			tell(() -> client.ruledOut(against.getMessage()));
		} catch (IOException | OrderException | IllegalArgumentException cannot) {
			tell(() -> client.refused(cannot.getMessage()));
		} finally {
			progress.done();
		}
		return Status.OK_STATUS;
	}

	private void tell(Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(news);
		}
	}
}
