package org.frisket.ui.bench.internal.editor;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiConsumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.Finding;
import org.frisket.prepare.checks.Cure;
import org.frisket.prepare.checks.Limits;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * Looks through the picture that was made last, and for what helps against its findings, once nothing has changed for a
 * while. Checks cannot be called off at every moment, so they are no part of the making of pictures: the next picture
 * begins while they still come to their end.
 */
final class PictureChecks extends Job {

	/** In a fluent hand keys follow each other faster than this, in ms. */
	private static final int QUIET_MS = 200;

	/** Curves to be looked through, and where the word of it goes. */
	private record Round(org.frisket.model.Job snapshot, PictureMaker maker, PictureMaker.Stage stage) {
	}

	private final AtomicReference<Round> next = new AtomicReference<>();
	private final PictureJob.Client client;
	private final BiConsumer<org.frisket.model.Job, Runnable> teller;
	private final BiConsumer<org.frisket.model.Job, Throwable> failed;

	/**
	 * @param teller tells on the UI thread what was found about a snapshot, unless there is a newer one
	 * @param failed what to do about a bug
	 */
	PictureChecks(PictureJob.Client client, BiConsumer<org.frisket.model.Job, Runnable> teller,
			BiConsumer<org.frisket.model.Job, Throwable> failed) {
		super(Messages.PictureJob_name);
		this.client = client;
		this.teller = teller;
		this.failed = failed;
		setSystem(true);
		setPriority(SHORT);
	}

	/** Looks this picture through in place of all before it. */
	void begin(org.frisket.model.Job snapshot, PictureMaker maker, PictureMaker.Stage stage) {
		next.set(new Round(snapshot, maker, stage));
		cancel();
		schedule(QUIET_MS);
	}

	/** There is something newer to come. */
	void drop() {
		next.set(null);
		cancel();
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Round round = next.get();
		if (round == null) {
			return Status.CANCEL_STATUS;
		}
		try {
			JobPicture checked = round.stage().checked(Limits.CARD, monitor::isCanceled);
			teller.accept(round.snapshot(), () -> client.pictureMade(checked, true));
			Map<Finding, List<Cure>> cures = round.maker().cures(checked, Limits.CARD, Tolerance.DEFAULT,
					monitor::isCanceled);
			teller.accept(round.snapshot(), () -> client.curesMade(cures));
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			failed.accept(round.snapshot(), e);
			return Status.OK_STATUS;
		} finally {
			// what was looked through must not outlive the editor
			next.compareAndSet(round, null);
		}
	}
}
