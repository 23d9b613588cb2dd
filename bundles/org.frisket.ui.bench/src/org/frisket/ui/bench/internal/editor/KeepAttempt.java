package org.frisket.ui.bench.internal.editor;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;

import org.eclipse.ui.PlatformUI;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.JobPlace.Held;

/**
 * What came of an attempt to keep a job: one of them.
 *
 * @param kept   what is held then
 * @param theirs what somebody else has put there before
 */
record KeepAttempt(Held kept, Held theirs) {

	/**
	 * Keeps a job. Where its place is far, that is done off the UI thread, while the window waits and stays alive.
	 *
	 * @param mark of what it was made of
	 */
	static KeepAttempt at(JobPlace place, byte[] content, String mark) throws IOException {
		if (!place.isFar()) {
			return now(place, content, mark);
		}
		KeepAttempt[] attempt = new KeepAttempt[1];
		try {
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(monitor -> {
				try {
					attempt[0] = now(place, content, mark);
				} catch (IOException e) {
					throw new InvocationTargetException(e);
				}
			});
		} catch (InvocationTargetException e) {
			throw e.getCause() instanceof IOException trouble ? trouble : new IOException(e.getCause());
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			throw new IOException(e);
		}
		return attempt[0];
	}

	private static KeepAttempt now(JobPlace place, byte[] content, String mark) throws IOException {
		try {
			return new KeepAttempt(place.save(content, mark), null);
		} catch (JobPlace.OvertakenException quicker) {
			return new KeepAttempt(null, place.load());
		}
	}
}
