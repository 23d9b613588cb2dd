package org.frisket.ui.bench.internal.editor;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.FontLibraries;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * Makes the picture of a job off the UI thread. A newer request calls off the one under way, and the last good picture
 * stays until the next is done. The curves are shown first, the findings when the checks are through.
 */
final class PictureJob extends Job {

	/** What the editor is told, on the UI thread. */
	interface Client {

		/** @param complete whether the findings are all there */
		void pictureMade(JobPicture picture, boolean complete);

		/** Where a caret stands in the wording that is typed, in its own frame; told before its picture. */
		void caretsMade(List<Point> places);

		/** What helps against the findings of the picture made last. */
		void curesMade(Map<Finding, List<Cure>> cures);

		/** Something went wrong that is a bug; it has been logged. */
		void pictureFailed(String message);
	}

	/** How long nothing must have changed before the checks begin; keys follow each other faster in a fluent hand. */
	private static final int QUIET_MS = 80;

	private final Display display;
	private final Client client;
	private final AtomicReference<org.frisket.model.Job> latest = new AtomicReference<>();
	private volatile String typed;
	private PictureMaker maker;

	PictureJob(Display display, Client client) {
		super(Messages.PictureJob_name);
		this.display = display;
		this.client = client;
		setSystem(true);
		setPriority(SHORT);
	}

	/** Makes a picture of the snapshot, which nobody may change any more. */
	void request(org.frisket.model.Job snapshot) {
		setLatest(snapshot);
		cancel();
		schedule();
	}

	/** The id of the wording whose carets are wanted with each picture; null for none. */
	void setTyped(String id) {
		typed = id;
	}

	/** Calls off what is under way and tells nothing any more. */
	void close() {
		setLatest(null);
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		org.frisket.model.Job snapshot = latest.get();
		if (snapshot == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			PictureMaker.Stage stage = maker().prepare(snapshot, Tolerance.DEFAULT, monitor::isCanceled);
			String id = typed;
			if (id != null) {
				List<Point> carets = maker().carets(snapshot, id, Tolerance.DEFAULT, monitor::isCanceled);
				tell(snapshot, () -> client.caretsMade(carets));
			}
			tell(snapshot, () -> client.pictureMade(stage.picture(), false));
			awaitQuiet(snapshot);
			JobPicture checked = stage.checked(Limits.CARD, monitor::isCanceled);
			tell(snapshot, () -> client.pictureMade(checked, true));
			Map<Finding, List<Cure>> cures = maker().cures(checked, Limits.CARD, Tolerance.DEFAULT,
					monitor::isCanceled);
			tell(snapshot, () -> client.curesMade(cures));
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			ILog.of(PictureJob.class).error(Messages.PictureJob_failed, e);
			tell(snapshot, () -> client.pictureFailed(Messages.PictureJob_failed));
			return Status.OK_STATUS;
		}
	}

	/** The next picture must not wait for checks that nobody will read: they cannot be called off at every moment. */
	private void awaitQuiet(org.frisket.model.Job snapshot) {
		try {
			synchronized (latest) {
				if (latest.get() == snapshot) {
					latest.wait(QUIET_MS);
				}
			}
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
		if (latest.get() != snapshot) {
			throw new CancellationException();
		}
	}

	private void setLatest(org.frisket.model.Job snapshot) {
		synchronized (latest) {
			latest.set(snapshot);
			latest.notifyAll();
		}
	}

	/** Made on first use, off the UI thread: it is the first to touch the fonts. */
	private PictureMaker maker() {
		if (maker == null) {
			maker = new PictureMaker(new JobPreparer(FontLibraries.installed()));
		}
		return maker;
	}

	private void tell(org.frisket.model.Job snapshot, Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(() -> {
				// an outdated picture is never shown: what is seen must not fall back behind an edit
				if (latest.get() == snapshot) {
					news.run();
				}
			});
		}
	}
}
