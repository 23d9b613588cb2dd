package org.frisket.ui.bench.internal.handlers.sight;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.geometry.Bounds;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.BenchHandler;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.Selection;

/** Shows the selected elements as large as they fit; the whole sheet if none is selected. */
public final class ZoomSelectionHandler extends BenchHandler {

	@Override
	protected void execute(BenchEditor bench, ExecutionEvent event) {
		Bounds selected = Selection.parts(bench.viewer()).stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY,
				Bounds::with);
		if (selected.isEmpty()) {
			bench.fit();
		} else {
			bench.zoom().fit(selected);
		}
	}
}
