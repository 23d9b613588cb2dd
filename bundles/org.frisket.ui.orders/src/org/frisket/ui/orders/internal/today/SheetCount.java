package org.frisket.ui.orders.internal.today;

import java.io.IOException;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.orders.OrderException;
import org.frisket.orders.work.Gang;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.sheets.imposing.LayingChoices;
import org.frisket.sheets.imposing.SheetPlan;
import org.frisket.studio.Studio;

/** Counts off the UI thread how many sheets picked jobs need about. A newer question calls off the one before. */
final class SheetCount extends Job {

	private static final long PAUSE_MS = 300;

	private final Display display = Display.getCurrent();
	private final BiConsumer<List<Long>, String> client;
	private volatile List<Long> numbers = List.of();
	/** What was told of them; empty before. */
	private String answer = ""; //$NON-NLS-1$

	/** @param client told on the UI thread of which jobs, and what */
	SheetCount(BiConsumer<List<Long>, String> client) {
		super(Messages.SheetCount_name);
		this.client = client;
		setSystem(true);
		setPriority(DECORATE);
	}

	/** @param anew whether what is known of the same jobs may be different by now */
	void ask(List<Long> of, boolean anew) {
		if (anew || !of.equals(numbers)) {
			numbers = of;
			answer = ""; //$NON-NLS-1$
			cancel();
			if (!of.isEmpty()) {
				schedule(PAUSE_MS);
			}
		} else if (!answer.isEmpty()) {
			client.accept(of, answer);
		}
	}

	void stop() {
		numbers = List.of();
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor progress) {
		List<Long> asked = numbers;
		String words;
		try {
			SheetPlan plan = new Gang(Studio.folder(), Clock.systemUTC(), new JobPreparer(FontLibraries.installed()),
					LayerLimits.byStock(StockLimits.ofStudio())).estimate(asked, LayingChoices.of(null),
					progress::isCanceled);
			words = plan.sheets().size() == 1 ? Messages.SheetCount_one
					: NLS.bind(Messages.SheetCount_sheets, plan.sheets().size());
		} catch (CancellationException calledOff) {
			return Status.CANCEL_STATUS;
		} catch (IOException | OrderException | IllegalArgumentException cannot) {
			words = cannot.getMessage();
		}
		String told = words;
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (asked.equals(numbers)) {
					answer = told;
					client.accept(asked, told);
				}
			});
		}
		return Status.OK_STATUS;
	}
}
