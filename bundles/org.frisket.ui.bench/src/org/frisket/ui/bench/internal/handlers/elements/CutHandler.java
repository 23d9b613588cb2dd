package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.typing.Typing;

/** Lays the selected elements on the clipboard and deletes them, or the letters selected in what is typed. */
public final class CutHandler extends BenchHandler {

	private static void cutLetters(Typing typing) {
		if (typing.hasSelection() && ElementClipboard.put(typing.copied())) {
			typing.deleteSelection();
		}
	}

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		if (bench.typing().isActive()) {
			cutLetters(bench.typing());
		} else if (CopyHandler.copy(bench)) {
			bench.commandStack().execute(new EditCommand(new DeleteElements(Selection.elements(bench.viewer()))));
		}
	}
}
