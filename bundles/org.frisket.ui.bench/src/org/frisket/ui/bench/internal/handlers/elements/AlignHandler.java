package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.AlignElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Brings edges or middles of the selected elements onto one line. */
public final class AlignHandler extends ElementHandler {

	private static final String EDGE = "org.frisket.ui.bench.command.align.edge"; //$NON-NLS-1$

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		return new AlignElements(boxes(bench), choice(event, EDGE, AlignElements.Edge.class));
	}
}
