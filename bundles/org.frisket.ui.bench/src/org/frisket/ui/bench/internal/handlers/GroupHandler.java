package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.GroupElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Takes the selected elements together. */
public final class GroupHandler extends ElementHandler {

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new GroupElements(elements);
	}
}
