package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.UngroupElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Takes the outermost groups of the selected elements apart. */
public final class UngroupHandler extends ElementHandler {

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		return new UngroupElements(elements);
	}
}
