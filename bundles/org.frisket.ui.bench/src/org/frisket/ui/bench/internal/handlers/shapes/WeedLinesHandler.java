package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.AddWeedLines;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays weed lines around the selected elements and between them. */
public final class WeedLinesHandler extends ElementHandler {

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new AddWeedLines(CombineHandler.lowestFirst(bench, elements));
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		AddWeedLines added = (AddWeedLines) edit;
		if (added.lines() != null) {
			Selection.select(bench.viewer(), List.of(added.lines()));
		}
	}
}
