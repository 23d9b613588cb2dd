package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.AddWeedLines;
import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays weed lines around the selected elements and between them. */
public final class WeedLinesHandler extends ElementHandler {

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new AddWeedLines(CombineHandler.lowestFirst(bench, elements));
	}

	@Override
	void done(BenchEditor bench, Edit edit) {
		AddWeedLines added = (AddWeedLines) edit;
		if (added.lines() != null) {
			Selection.select(bench.viewer(), List.of(added.lines()));
		}
	}
}
