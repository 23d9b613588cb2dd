package org.frisket.ui.bench.internal.grips;

import java.util.List;

import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.gef.GraphicalViewer;
import org.frisket.editing.Edit;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.snap.SnappingTracker;
import org.frisket.ui.bench.internal.tools.DragGhosts;

/** A drag of a grip: ghosts show what would come of it, a tag says its measure, Escape gives up. */
abstract class GripTracker extends SnappingTracker {

	protected final CanvasZoom zoom;
	private final List<ElementPart> parts;
	private final DragGhosts ghosts;

	/** @param parts those whose ghosts are shown */
	GripTracker(GraphicalViewer viewer, CanvasZoom zoom, List<ElementPart> parts) {
		this.zoom = zoom;
		this.parts = parts;
		ghosts = new DragGhosts(viewer, zoom);
	}

	/** What the drag comes to, from the place of the button's press to that of the pointer. */
	abstract Edit edit();

	/** Where the elements would come to lie. */
	abstract Transform map();

	/** The measure written beside the pointer. */
	abstract String measure();

	/** By how much the pointer was moved to the right, in mm. */
	final double dx() {
		return delta().width / zoom.pixelsPerMm();
	}

	/** By how much the pointer was moved down, in mm. */
	final double dy() {
		return delta().height / zoom.pixelsPerMm();
	}

	private Dimension delta() {
		return getDragMoveDelta();
	}

	final double step() {
		return zoom.step();
	}

	final boolean isShiftHeld() {
		return getCurrentInput().isShiftKeyDown();
	}

	final boolean isCentred() {
		return getCurrentInput().isControlKeyDown();
	}

	@Override
	protected String getCommandName() {
		return REQ_RESIZE;
	}

	@Override
	protected void finish() {
		erase();
		executeCommand(new EditCommand(edit()));
	}

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
