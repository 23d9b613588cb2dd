package org.frisket.ui.bench.internal.handlers.elements;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.geometry.nodes.NodeChange;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.letters.LetterAct;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.rulers.Guides;

/**
 * Deletes the selected elements, the selected nodes while those are edited, the chosen bridge while those are set, the
 * chosen guide, or the character after the caret. Chosen letters that were nudged go back to where they were set.
 */
public final class DeleteHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		if (bench.typing().isActive()) {
			// the key itself reaches the text before it comes here
			boolean byKey = event.getTrigger() instanceof Event trigger && trigger.type == SWT.KeyDown;
			if (!byKey) {
				bench.typing().deleteAfter();
			}
			return;
		}
		if (bench.nodes().isActive()) {
			bench.nodes().change(NodeChange.DELETE);
			return;
		}
		if (bench.letters().isActive()) {
			bench.letters().act(LetterAct.BACK);
			return;
		}
		if (bench.bridges().isActive()) {
			bench.bridges().removeChosen();
			return;
		}
		if (Guides.of(bench.viewer()).removeChosen()) {
			return;
		}
		bench.commandStack().execute(new EditCommand(new DeleteElements(Selection.elements(bench.viewer()))));
	}
}
