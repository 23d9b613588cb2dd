package org.frisket.ui.bench.internal.handlers.inside;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.model.Element;
import org.frisket.model.Outline;
import org.frisket.model.Wording;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Puts the caret into the selected wording; the selected outline shows its nodes instead. */
public final class EditWordingHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		List<Element> selected = Selection.elements(bench.viewer());
		if (selected.size() == 1 && selected.get(0) instanceof Wording wording) {
			bench.typing().edit(wording);
		} else if (selected.size() == 1 && selected.get(0) instanceof Outline outline) {
			EditNodesHandler.toggle(bench, outline);
		}
	}
}
