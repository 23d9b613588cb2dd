package org.frisket.editing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Edits of one document in their order, for use without an editor. Not thread-safe, as the model is not. */
public final class EditHistory implements EditExecutor {

	private final Deque<Edit> done = new ArrayDeque<>();
	private final Deque<Edit> undone = new ArrayDeque<>();

	/** Applies an edit, after which what was undone can no longer be redone. */
	@Override
	public void execute(Edit edit) {
		if (edit.canApply()) {
			edit.apply();
			done.push(edit);
			undone.clear();
		}
	}

	public boolean canUndo() {
		return !done.isEmpty();
	}

	public boolean canRedo() {
		return !undone.isEmpty();
	}

	/** Name of the edit that {@link #undo()} would take back. */
	public Optional<String> undoName() {
		return Optional.ofNullable(done.peek()).map(Edit::name);
	}

	/** Name of the edit that {@link #redo()} would make again. */
	public Optional<String> redoName() {
		return Optional.ofNullable(undone.peek()).map(Edit::name);
	}

	/** Names of the applied edits, the oldest first. */
	public List<String> names() {
		List<String> names = new ArrayList<>();
		done.descendingIterator().forEachRemaining(edit -> names.add(edit.name()));
		return names;
	}

	/** Takes the last edit back; does nothing if there is none. */
	public void undo() {
		if (canUndo()) {
			done.peek().undo();
			undone.push(done.pop());
		}
	}

	/** Makes the last edit that was undone again; does nothing if there is none. */
	public void redo() {
		if (canRedo()) {
			undone.peek().redo();
			done.push(undone.pop());
		}
	}
}
