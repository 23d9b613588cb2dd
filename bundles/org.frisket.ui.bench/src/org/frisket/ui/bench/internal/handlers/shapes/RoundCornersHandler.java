package org.frisket.ui.bench.internal.handlers.shapes;

import java.util.List;

import org.eclipse.core.commands.ExecutionEvent;
import org.frisket.editing.Edit;
import org.frisket.editing.shapes.RoundCorners;
import org.frisket.model.Element;
import org.frisket.ui.bench.internal.editor.BenchEditor;
import org.frisket.ui.bench.internal.handlers.ElementHandler;

/** Rounds the corners of the selected outlines, mats and combinations, or makes them sharp again if all are round. */
public final class RoundCornersHandler extends ElementHandler {

	/** In mm; well seen, and changed in the properties. */
	private static final double RADIUS = 3;

	@Override
	protected Edit edit(BenchEditor bench, List<Element> elements, ExecutionEvent event) {
		List<Element> cornered = elements.stream().filter(RoundCorners::concerns).toList();
		bench.say(cornered.isEmpty() ? Messages.RoundCornersHandler_none : null);
		boolean round = cornered.stream().allMatch(element -> RoundCorners.radius(element) > 0);
		return new RoundCorners(cornered, round ? 0 : RADIUS);
	}
}
