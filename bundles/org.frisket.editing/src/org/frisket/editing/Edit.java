package org.frisket.editing;

/**
 * One change to a job as its user thinks of it. An edit is applied once, and then undone and redone in turn; after an
 * undo the job is what it was before, to the byte of its file.
 */
public abstract class Edit {

	/** What it does, for menus and lists: "Move 3 elements". */
	public abstract String name();

	/** Whether it can be applied now and would change anything. */
	public abstract boolean canApply();

	/** Makes the change. If it throws, nothing is changed. */
	public abstract void apply();

	/** Takes the change back. */
	public abstract void undo();

	/** Makes the change again. */
	public abstract void redo();

	@Override
	public String toString() {
		return name();
	}
}
