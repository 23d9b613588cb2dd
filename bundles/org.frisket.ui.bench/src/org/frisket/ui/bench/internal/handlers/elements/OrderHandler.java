package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.Edit;
import org.frisket.editing.elements.ReorderElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Lays the selected elements above or below others of their layer. */
public final class OrderHandler extends ElementHandler {

	private static final String WAY = "org.frisket.ui.bench.command.order.way"; //$NON-NLS-1$

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		return new ReorderElements(elements, choice(event, WAY, ReorderElements.Way.class));
	}
}
