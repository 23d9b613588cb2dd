package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.DuplicateElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays a copy of the selected elements beside them, and selects it. */
public final class DuplicateHandler extends ElementHandler {

	/** In mm, so that the copy is seen beside its original. */
	private static final double SHIFT = 5;

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new DuplicateElements(elements, SHIFT, SHIFT);
	}

	@Override
	protected void done(BenchEditor bench, Edit edit) {
		List<Element> copies = ((DuplicateElements) edit).copies();
		if (!copies.isEmpty()) {
			Selection.select(bench.viewer(), copies);
		}
	}
}
