package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.DuplicateElements;
import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.parts.Selection;

/** Lays a copy of the selected elements beside them, and selects it. */
public final class DuplicateHandler extends ElementHandler {

	/** In mm, so that the copy is seen beside its original. */
	private static final double SHIFT = 5;

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new DuplicateElements(elements, SHIFT, SHIFT);
	}

	@Override
	void done(BenchEditor bench, Edit edit) {
		List<Element> copies = ((DuplicateElements) edit).copies();
		if (!copies.isEmpty()) {
			Selection.select(bench.viewer(), copies);
		}
	}
}
