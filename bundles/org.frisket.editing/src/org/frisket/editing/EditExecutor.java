package org.frisket.editing;

/** Applies edits to a document and remembers them for undo. Editors offer themselves as one. */
public interface EditExecutor {

	/** Applies an edit; one that {@linkplain Edit#canApply() cannot be applied} is passed over. */
	void execute(Edit edit);
}
