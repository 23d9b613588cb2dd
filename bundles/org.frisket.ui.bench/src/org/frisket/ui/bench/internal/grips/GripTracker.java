package org.frisket.ui.bench.internal.grips;

import org.eclipse.draw2d.geometry.Dimension;
import org.frisket.editing.Edit;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.snap.SnappingTracker;

/** A drag of a grip: what would come of it is seen, with its measure; Escape gives up. */
abstract class GripTracker extends SnappingTracker {

	protected final CanvasZoom zoom;

	GripTracker(CanvasZoom zoom) {
		this.zoom = zoom;
	}

	/** What the drag comes to, from the place of the button's press to that of the pointer. */
	abstract Edit edit();

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
}
