package org.frisket.ui.bench.internal.handlers.elements;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.TransformElements;
import org.frisket.geometry.Point;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Exchanges the sides of the selected elements about the middle of all of them. */
public final class MirrorHandler extends ElementHandler {

	private static final String AXIS = "org.frisket.ui.bench.command.mirror.axis"; //$NON-NLS-1$

	/** Which sides are exchanged. */
	private enum Axis {
		LEFT_RIGHT, TOP_BOTTOM
	}

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		Point centre = bounds(bench).centre();
		return choice(event, AXIS, Axis.class) == Axis.LEFT_RIGHT
				? TransformElements.mirrorLeftRight(elements, centre.x())
				: TransformElements.mirrorTopBottom(elements, centre.y());
	}
}
