package org.frisket.ui.bench.internal.tools;

import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.editing.arranging.MoveElements;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.snap.SnapAnchors;
import org.frisket.geometry.snap.SnapHold;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.GroupSelection;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.SnapKey;
import org.frisket.ui.bench.internal.snap.Snapping;

/**
 * Selects an element with its group, and moves all selected ones when dragged. The distance is taken to a round step
 * that is just finer than a pixel, or to what holds the box around them; Shift keeps to one direction, Alt keeps
 * everything from holding, Escape gives up.
 */
public final class MoveTracker extends SelectEditPartTracker {

	private final CanvasZoom zoom;
	private final SnapKey key = new SnapKey();
	private DragGhosts ghosts;
	private SnapDrag snap;
	private List<ElementPart> parts = List.of();
	private Bounds box = Bounds.EMPTY;
	private SnapResult held = SnapResult.NONE;

	public MoveTracker(ElementPart part) {
		super(part);
		zoom = part.zoom();
	}

	@Override
	protected Cursor calculateCursor() {
		return isInState(STATE_DRAG_IN_PROGRESS) ? Cursors.SIZEALL : super.calculateCursor();
	}

	/** A member stands for its group, except with Control: then it is reached by itself. */
	@Override
	protected void performSelection() {
		if (!hasSelectionOccurred()) {
			setFlag(FLAG_SELECTION_PERFORMED, true);
			GroupSelection groups = new GroupSelection(getCurrentViewer());
			ElementPart part = (ElementPart) getSourceEditPart();
			if (getCurrentInput().isModKeyDown(SWT.MOD1)) {
				groups.reach(part);
			} else if (getCurrentInput().isShiftKeyDown()) {
				groups.add(part);
			} else {
				groups.select(part);
			}
		}
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			Point shift = shift();
			erase();
			if (!shift.equals(Point.ORIGIN)) {
				executeCommand(new EditCommand(
						new MoveElements(Selection.elements(getCurrentViewer()), shift.x(), shift.y())));
			}
			return true;
		}
		if (stateTransition(STATE_DRAG, STATE_TERMINAL)) {
			performSelection();
			return true;
		}
		return super.handleButtonUp(button);
	}

	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		return keyTurned(event, true) || super.handleKeyDown(event);
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		return keyTurned(event, false) || super.handleKeyUp(event);
	}

	private boolean keyTurned(KeyEvent event, boolean down) {
		boolean turned = key.turned(event.keyCode, down);
		if (turned && isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return turned;
	}

	/** By how much the elements are moved, in mm. */
	private Point shift() {
		Dimension delta = getDragMoveDelta();
		boolean oneWay = getCurrentInput().isShiftKeyDown();
		boolean goesAcross = !oneWay || Math.abs(delta.width) >= Math.abs(delta.height);
		boolean goesDown = !oneWay || !goesAcross;
		double dx = goesAcross ? delta.width / zoom.pixelsPerMm() : 0;
		double dy = goesDown ? delta.height / zoom.pixelsPerMm() : 0;
		held = SnapResult.NONE;
		if (snap != null && !key.isHeld(getCurrentInput().isAltKeyDown())) {
			SnapAnchors anchors = SnapAnchors.of(moved(dx, dy));
			held = snap.snap(!goesDown ? anchors.acrossOnly() : !goesAcross ? anchors.downOnly() : anchors);
		}
		return new Point(held(dx, held.x()), held(dy, held.y()));
	}

	private double held(double mm, Optional<SnapHold> hold) {
		return hold.isPresent() ? CanvasZoom.plain(mm + hold.get().shift()) : zoom.rounded(mm);
	}

	private Bounds moved(double dx, double dy) {
		return new Bounds(box.minX() + dx, box.minY() + dy, box.maxX() + dx, box.maxY() + dy);
	}

	private void show() {
		if (ghosts == null) {
			parts = Selection.movableParts(getCurrentViewer());
			box = parts.stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY, Bounds::with);
			ghosts = new DragGhosts(getCurrentViewer(), zoom);
			snap = Snapping.of(getCurrentViewer()).begin(Selection.parts(getCurrentViewer()));
		}
		Point shift = shift();
		ghosts.show(parts, Transform.translation(shift.x(), shift.y()), LengthText.place(shift.x(), shift.y()),
				getLocation());
		snap.show(held, moved(shift.x(), shift.y()));
	}

	private void erase() {
		if (ghosts != null) {
			ghosts.erase();
			snap.erase();
		}
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
