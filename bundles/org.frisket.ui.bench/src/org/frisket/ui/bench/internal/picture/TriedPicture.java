package org.frisket.ui.bench.internal.picture;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * The picture of a job as an edit would make it, seen in place of that of the job as it is; or not seen, to compare. Only
 * for the UI thread.
 */
public final class TriedPicture {

	private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
	private JobPicture picture;
	private boolean seen;

	/** @param listener told whenever another picture is to be seen */
	public void addListener(Runnable listener) {
		listeners.add(listener);
	}

	private void changed() {
		listeners.forEach(Runnable::run);
	}

	/** Sets the picture; one that comes in place of another is seen only if that was. */
	public void set(JobPicture newPicture) {
		seen = picture == null || seen;
		picture = newPicture;
		changed();
	}

	/** From now on there is none. */
	public void drop() {
		if (picture != null) {
			picture = null;
			seen = false;
			changed();
		}
	}

	public boolean isThere() {
		return picture != null;
	}

	public boolean isSeen() {
		return seen;
	}

	/** Shows the one that is not seen now; nothing happens if there is only one. */
	public void toggle() {
		if (picture != null) {
			seen = !seen;
			changed();
		}
	}

	/** The picture that is to be seen: this one or the given one. */
	public JobPicture or(JobPicture real) {
		return seen ? picture : real;
	}
}
