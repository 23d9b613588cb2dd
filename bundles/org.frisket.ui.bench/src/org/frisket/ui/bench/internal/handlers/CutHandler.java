package org.frisket.ui.bench.internal.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.DeleteElements;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays the selected elements on the clipboard and deletes them. */
public final class CutHandler extends BenchHandler {

	@Override
	void execute(BenchEditor bench, ExecutionEvent event) {
		if (CopyHandler.copy(bench)) {
			bench.commandStack().execute(new EditCommand(new DeleteElements(Selection.elements(bench.viewer()))));
		}
	}
}
