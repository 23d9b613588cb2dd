package org.frisket.editing;

import java.util.ArrayList;
import java.util.List;

/** Several edits as one step: one field of several elements, say. Those that change nothing are passed over. */
public final class EditGroup extends Edit {

	private final String name;
	private final List<Edit> edits;
	private final List<Edit> done = new ArrayList<>();

	/** @param edits none of which depends on an earlier one having been applied to be applicable */
	public EditGroup(String name, List<? extends Edit> edits) {
		this.name = name;
		this.edits = List.copyOf(edits);
	}

	/** Those it is made of. */
	public List<Edit> edits() {
		return edits;
	}

	@Override
	public String name() {
		return name;
	}

	@Override
	public boolean canApply() {
		return edits.stream().anyMatch(Edit::canApply);
	}

	@Override
	public void apply() {
		try {
			for (Edit edit : edits) {
				if (edit.canApply()) {
					edit.apply();
					done.add(edit);
				}
			}
		} catch (RuntimeException | Error e) {
			undo();
			done.clear();
			throw e;
		}
	}

	@Override
	public void undo() {
		for (int i = done.size() - 1; i >= 0; i--) {
			done.get(i).undo();
		}
	}

	@Override
	public void redo() {
		done.forEach(Edit::redo);
	}
}
