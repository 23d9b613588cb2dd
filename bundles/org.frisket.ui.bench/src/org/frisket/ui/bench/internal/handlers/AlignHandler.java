package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.AlignElements;
import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Brings edges or middles of the selected elements onto one line. */
public final class AlignHandler extends ElementHandler {

	private static final String EDGE = "org.frisket.ui.bench.command.align.edge"; //$NON-NLS-1$

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		return new AlignElements(boxes(bench), choice(event, EDGE, AlignElements.Edge.class));
	}
}
