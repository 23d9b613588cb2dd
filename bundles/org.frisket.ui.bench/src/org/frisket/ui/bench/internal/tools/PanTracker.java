package org.frisket.ui.bench.internal.tools;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.requests.SelectionRequest;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** Pushes the bench about with the middle button. */
public final class PanTracker extends AbstractTool implements DragTracker {

	private static final int MIDDLE_BUTTON = 2;

	private final CanvasZoom zoom;
	private Point last;

	public PanTracker(CanvasZoom zoom) {
		this.zoom = zoom;
	}

	/** Whether a press of the button asks for this rather than for what lies under the pointer. */
	public static boolean isAskedFor(Request request) {
		return request instanceof SelectionRequest selection && selection.getLastButtonPressed() == MIDDLE_BUTTON;
	}

	@Override
	protected String getCommandName() {
		return REQ_SELECTION;
	}

	@Override
	protected Cursor calculateCursor() {
		return Cursors.HAND;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		last = getLocation();
		return stateTransition(STATE_INITIAL, STATE_DRAG);
	}

	@Override
	protected boolean handleDragInProgress() {
		Point now = getLocation();
		zoom.pan(last.x - now.x, last.y - now.y);
		last = now;
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		setState(STATE_TERMINAL);
		return true;
	}

	@Override
	public void commitDrag() {
		// the view has moved already
	}
}
