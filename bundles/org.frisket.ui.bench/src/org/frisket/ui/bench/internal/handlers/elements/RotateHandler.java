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

/** Turns the selected elements about the middle of all of them. */
public final class RotateHandler extends ElementHandler {

	private static final String DEGREES = "org.frisket.ui.bench.command.rotate.degrees"; //$NON-NLS-1$

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) throws ExecutionException {
		Point centre = bounds(bench).centre();
		return TransformElements.rotate(elements, Math.toRadians(degrees(event)), centre.x(), centre.y());
	}

	private static double degrees(ExecutionEvent event) throws ExecutionException {
		String text = event.getParameter(DEGREES);
		try {
			return Double.parseDouble(String.valueOf(text));
		} catch (NumberFormatException e) {
			throw new ExecutionException("not an angle in degrees: " + text, e); //$NON-NLS-1$
		}
	}
}
