package org.frisket.ui.bench.internal.grips;

import java.util.List;

import org.eclipse.gef.GraphicalViewer;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.tools.DragGhosts;

/** A drag that only places elements otherwise, so that a ghost of each shows at once what would come of it. */
abstract class GhostTracker extends GripTracker {

	private final List<ElementPart> parts;
	private final DragGhosts ghosts;

	/** @param parts those whose ghosts are shown */
	GhostTracker(GraphicalViewer viewer, CanvasZoom zoom, List<ElementPart> parts) {
		super(zoom);
		this.parts = parts;
		ghosts = new DragGhosts(viewer, zoom);
	}

	/** Where the elements would come to lie. */
	abstract Transform map();

	@Override
	protected void show() {
		ghosts.show(parts, map(), measure(), getLocation());
		showHeld();
	}

	/** Shows what holds the drag; most are held by nothing. */
	void showHeld() {
		// a turn and a distance have no place that could be held
	}

	@Override
	protected void erase() {
		ghosts.erase();
	}
}
