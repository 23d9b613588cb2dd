package org.frisket.ui.bench.internal.handlers;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.DistributeElements;
import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;

/** Makes the gaps between the selected elements equal. */
public final class DistributeHandler extends ElementHandler {

	private static final String DIRECTION = "org.frisket.ui.bench.command.distribute.direction"; //$NON-NLS-1$

	@Override
	Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		return new DistributeElements(boxes(bench), choice(event, DIRECTION, DistributeElements.Direction.class));
	}
}
