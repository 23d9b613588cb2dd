package org.frisket.ui.bench.internal.files;

import java.io.IOException;
import java.time.Instant;
import java.util.function.Supplier;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.frisket.model.Job;

/**
 * Keeps a recovery copy of one open job up to date, off the UI thread: after each pause in the work, and every so often
 * while there is none.
 */
public final class Autosave extends org.eclipse.core.runtime.jobs.Job {

	private static final long PAUSE_MS = 1500;
	private static final long MS = 1000;

	/** What there is to keep. */
	private record Waiting(Unsaved unsaved, Job snapshot, long sinceMs) {
	}

	private final RecoveryStore store;
	private final Runnable news;
	private final Supplier<byte[]> base;
	private Waiting waiting;
	private Unsaved kept;
	private boolean closed;
	private volatile Instant last;
	private volatile String trouble;

	/** @param news told, on any thread, when a copy was written, could not be written, or was dropped */
	public Autosave(RecoveryStore store, Runnable news) {
		this(store, news, () -> new byte[0]);
	}

	/** @param base gives, on any thread, the job as it was taken out of where it is kept; empty for none */
	public Autosave(RecoveryStore store, Runnable news, Supplier<byte[]> base) {
		super(Messages.Autosave_name);
		this.store = store;
		this.news = news;
		this.base = base;
		setSystem(true);
		setPriority(DECORATE);
	}

	/**
	 * The job has changed.
	 *
	 * @param snapshot        a copy that nobody changes any more
	 * @param intervalSeconds the longest that a change waits
	 */
	public void changed(Unsaved unsaved, Job snapshot, int intervalSeconds) {
		long now = System.currentTimeMillis();
		long since;
		synchronized (this) {
			if (closed) {
				return;
			}
			since = waiting == null ? now : waiting.sinceMs();
			waiting = new Waiting(unsaved, snapshot, since);
		}
		cancel();
		schedule(Math.max(0, Math.min(PAUSE_MS, since + intervalSeconds * MS - now)));
	}

	/** The job is as its file is: nothing needs to be kept. */
	public synchronized void settled() {
		waiting = null;
		last = null;
		trouble = null;
		cancel();
		if (kept != null) {
			Recovery.remove(kept);
			kept = null;
		}
		news.run();
	}

	/** A copy was found when the job was opened: it is this one's now. */
	public synchronized void adopt(Unsaved unsaved) {
		kept = unsaved;
	}

	/** The job is closed, and what was not saved is given up on purpose. */
	public synchronized void close() {
		closed = true;
		settled();
	}

	/** When the last copy was made; null if there is none. */
	public Instant last() {
		return last;
	}

	/** Why the last copy could not be made; null if it could. */
	public String trouble() {
		return trouble;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		synchronized (this) {
			if (waiting == null) {
				return Status.CANCEL_STATUS;
			}
			Waiting now = waiting;
			waiting = null;
			write(now);
		}
		news.run();
		return Status.OK_STATUS;
	}

	private void write(Waiting now) {
		try {
			store.write(now.unsaved(), now.snapshot(), base.get());
			kept = now.unsaved();
			last = Instant.now();
			trouble = null;
		} catch (IOException e) {
			// tried again with the next change
			trouble = e.getMessage();
			Recovery.log(e);
		}
	}
}
