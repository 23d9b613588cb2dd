package org.frisket.ui.orders.internal.docket;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;
import org.frisket.orders.paper.DocketFacts;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.PaperForm;
import org.frisket.orders.paper.ShownJob;
import org.frisket.page.flow.Figures;
import org.frisket.studio.Studio;
import org.frisket.ui.orders.internal.Pictures;

/** Reads a job and works it through for its docket. Each part is told when it is there, the quick ones first. */
final class DocketJob extends Job {

	private static final int PICTURE_HEIGHT_PX = 220;

	private final Entry entry;
	private final int width;
	private final int density;
	private final Display display;
	private final Consumer<Sight> told;

	/**
	 * @param width   of a picture at most, in pixels of the screen
	 * @param density pixels of a picture to one of the screen
	 * @param told    on the UI thread, and no more once cancelled
	 */
	DocketJob(Entry entry, int width, int density, Display display, Consumer<Sight> told) {
		super(NLS.bind(Messages.DocketJob_name, entry.number()));
		this.entry = entry;
		this.width = width;
		this.density = density;
		this.display = display;
		this.told = told;
		setSystem(true);
		setPriority(SHORT);
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Sight seen = Sight.of(entry);
		try {
			OrderBook book = new OrderBook(Studio.folder());
			StoredJob stored = book.open(entry.number());
			seen = new Sight(stored.entry(), List.copyOf(stored.job().getHistory()), book.papers(entry.number()),
					Agreement.with(stored.entry().customer()), Optional.empty(), Optional.empty(), false, ""); //$NON-NLS-1$
			tell(seen, monitor);
			Means means = Means.now();
			PaperForm form = Means.form();
			Monitor watch = Pictures.monitor(monitor);
			JobWork designed = JobWork.designed(stored.job(), means.work(), watch);
			seen = seen.with(DocketFacts.of(designed, form), picture(designed, form), false);
			tell(seen, monitor);
			JobWork work = means.papers().work(stored.job(), means.work(), watch);
			seen = seen.with(DocketFacts.of(work, form), seen.picture(), true);
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (IOException | OrderException | IllegalArgumentException e) {
			seen = seen.because(String.valueOf(e.getMessage()));
		} catch (RuntimeException | LinkageError e) {
			ILog.of(DocketJob.class).error(e.toString(), e);
			seen = seen.because(NLS.bind(Messages.DocketJob_failed, e));
		}
		tell(seen, monitor);
		return Status.OK_STATUS;
	}

	private Optional<Sight.Picture> picture(JobWork work, PaperForm form) throws IOException {
		return ShownJob.of(work.prepared(), width, PICTURE_HEIGHT_PX, density, new Figures(form.inches()))
				.map(shown -> new Sight.Picture(Pictures.data(shown.image()), density, shown.bar(), shown.text()));
	}

	private void tell(Sight sight, IProgressMonitor monitor) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				if (!monitor.isCanceled()) {
					told.accept(sight);
				}
			});
		}
	}
}
