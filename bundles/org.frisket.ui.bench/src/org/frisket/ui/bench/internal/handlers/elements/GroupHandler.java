package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.GroupElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Takes the selected elements together. */
public final class GroupHandler extends ElementHandler {

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new GroupElements(elements);
	}
}
