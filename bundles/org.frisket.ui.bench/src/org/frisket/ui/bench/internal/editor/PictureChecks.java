package org.frisket.ui.bench.internal.editor;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import org.frisket.prepare.checks.LayerLimits;
import org.frisket.prepare.checks.StockLimits;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * Looks through the picture that was made last, and for what helps against its findings, once nothing has changed for a
 * while. Checks cannot be called off at every moment, so they are no part of the making of pictures: the next picture
 * begins while they still come to their end.
 */
final class PictureChecks extends Job {

	/** How many findings are cured unasked; what helps against the others is sought once somebody looks at them. */
	private static final int CURED_AT_ONCE = 60;
	/** How many cures are told of at a time when they are asked for. */
	private static final int CURED_TOGETHER = 8;

	/** In a fluent hand keys follow each other faster than this, in ms. */
	private static final int QUIET_MS = 200;

	/** Curves to be looked through, and where the word of it goes. */
	private record Round(org.frisket.model.Job snapshot, PictureMaker maker, PictureMaker.Stage stage) {
	}

	/** A picture that was looked through, whose findings may be asked about. */
	private record Checked(Round round, JobPicture picture) {
	}

	private final AtomicReference<Round> next = new AtomicReference<>();
	private final Set<Finding> asked = new LinkedHashSet<>();
	private Checked last;
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
		forget();
		next.set(new Round(snapshot, maker, stage));
		cancel();
		schedule(QUIET_MS);
	}

	/** There is something newer to come. What was looked through must not outlive the editor. */
	void drop() {
		next.set(null);
		forget();
		cancel();
	}

	private synchronized void forget() {
		last = null;
		asked.clear();
	}

	private synchronized void keep(Round round, JobPicture picture) {
		if (next.compareAndSet(round, null)) {
			last = new Checked(round, picture);
		}
	}

	/** Has what helps against a finding of the last picture looked for. */
	synchronized void seek(Finding finding) {
		if (last != null && asked.add(finding)) {
			schedule();
		}
	}

	/** The next ones to be cured; empty if there are none, or there is a newer picture. */
	private synchronized List<Finding> asked(Checked of) {
		return of == null || of != last ? List.of() : asked.stream().limit(CURED_TOGETHER).toList();
	}

	private synchronized void answered(List<Finding> findings) {
		asked.removeAll(findings);
	}

	private synchronized Checked last() {
		return last;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		Round round = next.get();
		Checked checked = last();
		if (round == null && checked == null) {
			return Status.CANCEL_STATUS;
		}
		org.frisket.model.Job snapshot = round == null ? checked.round().snapshot() : round.snapshot();
		try {
			if (round != null) {
				check(round, monitor);
			}
			answer(last(), monitor);
			return Status.OK_STATUS;
		} catch (CancellationException e) {
			return Status.CANCEL_STATUS;
		} catch (RuntimeException | LinkageError e) {
			failed.accept(snapshot, e);
			return Status.OK_STATUS;
		} finally {
			next.compareAndSet(round, null);
		}
	}

	private void check(Round round, IProgressMonitor monitor) {
		JobPicture checked = round.stage().checked(limits(), monitor::isCanceled);
		teller.accept(round.snapshot(), () -> client.pictureMade(checked, true));
		cure(round, checked, checked.findings().stream().limit(CURED_AT_ONCE).toList(), monitor);
		keep(round, checked);
	}

	/** As the studio has them now: another desk may have changed them. */
	private static LayerLimits limits() {
		return LayerLimits.byStock(StockLimits.ofStudio());
	}

	private void answer(Checked checked, IProgressMonitor monitor) {
		for (List<Finding> some = asked(checked); !some.isEmpty(); some = asked(checked)) {
			cure(checked.round(), checked.picture(), some, monitor);
			answered(some);
		}
	}

	private void cure(Round round, JobPicture checked, List<Finding> findings, IProgressMonitor monitor) {
		Map<Finding, List<Cure>> cures = round.maker().cures(checked, findings, limits(), Tolerance.DEFAULT,
				monitor::isCanceled);
		teller.accept(round.snapshot(), () -> client.curesMade(cures));
	}
}
