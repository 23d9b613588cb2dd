package org.frisket.ui.bench.internal.handlers.inside;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.model.Element;
import org.frisket.model.Outline;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Edits the nodes of the selected outline, or leaves them. */
public final class EditNodesHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		bench.typing().end(true);
		List<Element> selected = Selection.elements(bench.viewer());
		if (selected.size() == 1 && selected.get(0) instanceof Outline outline) {
			toggle(bench, outline);
		} else {
			bench.nodes().end();
		}
	}

	static void toggle(BenchEditor bench, Outline outline) {
		if (bench.nodes().isActive()) {
			bench.nodes().end();
		} else {
			bench.nodes().begin(outline);
		}
	}
}
