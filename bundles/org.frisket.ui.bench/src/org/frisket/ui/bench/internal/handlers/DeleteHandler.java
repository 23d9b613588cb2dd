package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.DeleteElements;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.Selection;

/** Deletes the selected elements. */
public final class DeleteHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		bench.commandStack().execute(new EditCommand(new DeleteElements(Selection.elements(bench.viewer()))));
	}
}
