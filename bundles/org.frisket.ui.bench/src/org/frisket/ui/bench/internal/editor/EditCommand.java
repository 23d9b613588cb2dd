package org.frisket.ui.bench.internal.editor;

import org.eclipse.gef.commands.Command;
import org.frisket.editing.Edit;

/** An edit on GEF's command stack, which is the only one a job has. */
public final class EditCommand extends Command {

	private final Edit edit;

	public EditCommand(Edit edit) {
		super(edit.name());
		this.edit = edit;
	}

	public Edit edit() {
		return edit;
	}

	@Override
	public boolean canExecute() {
		return edit.canApply();
	}

	@Override
	public void execute() {
		edit.apply();
	}

	@Override
	public void undo() {
		edit.undo();
	}

	@Override
	public void redo() {
		edit.redo();
	}
}
