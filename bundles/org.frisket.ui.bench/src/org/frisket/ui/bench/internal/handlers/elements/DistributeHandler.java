package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.DistributeElements;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Makes the gaps between the selected elements equal. */
public final class DistributeHandler extends ElementHandler {

	private static final String DIRECTION = "org.frisket.ui.bench.command.distribute.direction"; //$NON-NLS-1$

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		return new DistributeElements(boxes(bench), choice(event, DIRECTION, DistributeElements.Direction.class));
	}
}
