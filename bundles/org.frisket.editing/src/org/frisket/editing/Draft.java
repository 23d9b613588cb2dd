package org.frisket.editing;

import java.util.function.Supplier;

/**
 * An edit that is tried on a job while its user still chooses, by a slider or in a list: it is seen at once, becomes one
 * step of undo when it is accepted, and leaves nothing behind when it is dropped. Whoever else changes the job drops it
 * first.
 */
public final class Draft {

	private final EditExecutor edits;
	private final Runnable changed;
	private Supplier<? extends Edit> latest;
	/** What is applied now; null if nothing is. */
	private Edit shown;

	/**
	 * @param edits   where the accepted edit goes
	 * @param changed told whenever the job was changed other than through {@code edits}
	 */
	public Draft(EditExecutor edits, Runnable changed) {
		this.edits = edits;
		this.changed = changed;
	}

	/** Shows what an edit comes to, in place of the one shown before; made again when it is accepted. */
	public void show(Supplier<? extends Edit> edit) {
		boolean wasShown = takeBack();
		latest = edit;
		Edit next = edit.get();
		if (next.canApply()) {
			next.apply();
			shown = next;
		}
		if (wasShown || shown != null) {
			changed.run();
		}
	}

	/** Whether the job is as an edit would make it, and not as it was. */
	public boolean isShown() {
		return shown != null;
	}

	/** Makes the edit that is shown a step of undo; nothing happens if none is shown. */
	public void accept() {
		Supplier<? extends Edit> accepted = latest;
		if (takeBack()) {
			edits.execute(accepted.get());
		}
		latest = null;
	}

	/** Leaves the job as it was before the first edit was shown. */
	public void drop() {
		latest = null;
		if (takeBack()) {
			changed.run();
		}
	}

	private boolean takeBack() {
		if (shown == null) {
			return false;
		}
		Edit before = shown;
		shown = null;
		before.undo();
		return true;
	}
}
