package org.frisket.ui.bench.internal.editor;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * Makes the picture of a job off the UI thread. A newer request calls off the one under way; while a change goes on and
 * on, not all of them in a row: who types faster than pictures are made still sees one after the other. The last good
 * picture stays until the next is done. The curves are shown first, those of mats last, and the findings when the
 * checks are through.
 */
final class PictureJob extends Job {

	/** What the editor is told, on the UI thread. */
	interface Client {

		/** @param complete whether the findings are all there */
		void pictureMade(JobPicture picture, boolean complete);

		/** Where a caret stands in the wording that is typed, in its own frame; told before its picture. */
		void caretsMade(List<CaretPlace> places);

		/** Where the letters of the wording stand that were asked for, in its own frame; told after its picture. */
		void lettersMade(List<LetterPlace> letters);

		/**
		 * What helps against some findings of the picture made last: first the gravest, later those that were asked
		 * about.
		 */
		void curesMade(Map<Finding, List<Cure>> cures);

		/** Something went wrong that is a bug; it has been logged. */
		void pictureFailed(String message);
	}

	/** If nothing new was seen for so long, what is under way is worth more than what is newer. */
	private static final long PATIENCE_NS = 100_000_000L;
	/** The same of pictures with all their mats. */
	private static final long PATIENCE_WITH_MATS_NS = 400_000_000L;

	private final Display display;
	private final Client client;
	private final AtomicReference<org.frisket.model.Job> latest = new AtomicReference<>();
	private final AtomicInteger changes = new AtomicInteger();
	private final PictureChecks checks;
	private volatile String typed;
	private volatile String lettered;
	private volatile long madeAt = System.nanoTime();
	private volatile long madeWithMatsAt = madeAt;
	private PictureMaker maker;

	PictureJob(Display display, Client client) {
		super(Messages.PictureJob_name);
		this.display = display;
		this.client = client;
		checks = new PictureChecks(client, this::tell, this::failed);
		setSystem(true);
		setPriority(SHORT);
	}

	/** Makes a picture of the snapshot, which nobody may change any more, and of none before it. */
	void request(org.frisket.model.Job snapshot) {
		changes.incrementAndGet();
		begin(snapshot, true);
	}

	/**
	 * As {@link #request} for a change that goes on, such as a word being typed: of those before it, some are shown.
	 */
	void requestNext(org.frisket.model.Job snapshot) {
		long now = System.nanoTime();
		begin(snapshot, now - madeAt < PATIENCE_NS && now - madeWithMatsAt < PATIENCE_WITH_MATS_NS);
	}

	private void begin(org.frisket.model.Job snapshot, boolean callOff) {
		latest.set(snapshot);
		checks.drop();
		if (callOff) {
			cancel();
		}
		schedule();
	}

	/** Has what helps against a finding of the picture made last looked for. */
	void seekCures(Finding finding) {
		checks.seek(finding);
	}

	/** The id of the wording whose carets are wanted with each picture; null for none. */
	void setTyped(String id) {
		typed = id;
	}

	/** The id of the wording whose letters are wanted with each picture; null for none. */
	void setLettered(String id) {
		lettered = id;
	}

	/** Calls off what is under way and tells nothing any more. */
	void close() {
		changes.incrementAndGet();
		latest.set(null);
		checks.drop();
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		int change = changes.get();
		org.frisket.model.Job snapshot = latest.get();
		if (snapshot == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			PictureMaker.Stage stage = maker().prepare(snapshot, Tolerance.DEFAULT, monitor::isCanceled,
					first -> tellPicture(change, snapshot, first));
			madeWithMatsAt = System.nanoTime();
			tellPicture(change, snapshot, stage.picture());
			// checks must not hold up the painting of what they look through
			tell(snapshot, () -> display(() -> beginChecks(snapshot, stage)));
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			failed(snapshot, e);
			return Status.OK_STATUS;
		}
	}

	private void beginChecks(org.frisket.model.Job snapshot, PictureMaker.Stage stage) {
		if (latest.get() == snapshot) {
			checks.begin(snapshot, maker(), stage);
		}
	}

	private void tellPicture(int change, org.frisket.model.Job snapshot, JobPicture picture) {
		madeAt = System.nanoTime();
		String id = typed;
		List<CaretPlace> carets = id == null ? List.of()
				: maker().carets(snapshot, id, Tolerance.DEFAULT, Monitor.NONE);
		String wanted = lettered;
		List<LetterPlace> letters = wanted == null ? List.of()
				: maker().letters(snapshot, wanted, Tolerance.DEFAULT, Monitor.NONE);
		display(() -> {
			// what is seen must not fall back behind a change; while one goes on, each picture is newer than the last
			if (changes.get() == change) {
				if (!carets.isEmpty()) {
					client.caretsMade(carets);
				}
				client.pictureMade(picture, false);
				if (wanted != null && wanted.equals(lettered)) {
					client.lettersMade(letters);
				}
			}
		});
	}

	private void failed(org.frisket.model.Job snapshot, Throwable bug) {
		ILog.of(PictureJob.class).error(Messages.PictureJob_failed, bug);
		tell(snapshot, () -> client.pictureFailed(Messages.PictureJob_failed));
	}

	/** Made on first use, off the UI thread: it is the first to touch the fonts. */
	private PictureMaker maker() {
		if (maker == null) {
			maker = new PictureMaker(new JobPreparer(FontLibraries.installed()));
		}
		return maker;
	}

	/** Findings are told of the newest job only: they would name places that are others by now. */
	private void tell(org.frisket.model.Job snapshot, Runnable news) {
		display(() -> {
			if (latest.get() == snapshot) {
				news.run();
			}
		});
	}

	private void display(Runnable news) {
		if (!display.isDisposed()) {
			display.asyncExec(news);
		}
	}
}
