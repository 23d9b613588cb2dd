package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.geometry.Point;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/**
 * Selects a part, and moves all selected ones when dragged, within their sheet and to others. What would be in the way is
 * shown, and it may be dropped there all the same; with Alt it goes to the nearest free place. Shift keeps to one
 * direction, Escape gives up.
 */
final class PlacementTracker extends SelectEditPartTracker {

	private final SheetsPart sheets;
	private final CanvasZoom zoom;
	private MoveFeedback feedback;
	private List<PlacementPart> parts = List.of();
	private boolean alt;

	PlacementTracker(PlacementPart part) {
		super(part);
		sheets = (SheetsPart) part.getParent();
		zoom = sheets.zoom();
	}

	@Override
	protected Cursor calculateCursor() {
		return isInState(STATE_DRAG_IN_PROGRESS) ? Cursors.SIZEALL : super.calculateCursor();
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			alt = getCurrentInput().isAltKeyDown();
			show();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			gather();
			List<Board.Move> moves = moves();
			erase();
			if (!moves.isEmpty()) {
				sheets.setCurrent(moves.get(0).sheet());
				sheets.board().move(moves);
			}
			return true;
		}
		if (stateTransition(STATE_DRAG, STATE_TERMINAL)) {
			performSelection();
			sheets.setCurrent((Sheet) ((PlacementPart) getSourceEditPart()).placement().eContainer());
			return true;
		}
		return super.handleButtonUp(button);
	}

	/** What Alt changes is seen at once, and not only when the pointer next moves. */
	@Override
	protected boolean handleKeyDown(KeyEvent event) {
		return altTurned(event, true) || super.handleKeyDown(event);
	}

	@Override
	protected boolean handleKeyUp(KeyEvent event) {
		return altTurned(event, false) || super.handleKeyUp(event);
	}

	private boolean altTurned(KeyEvent event, boolean down) {
		if (event.keyCode != SWT.ALT) {
			return false;
		}
		alt = down;
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			show();
		}
		return true;
	}

	private void gather() {
		if (!parts.isEmpty()) {
			return;
		}
		// a part that is dragged without having been selected is meant alone
		if (getSourceEditPart().getSelected() == EditPart.SELECTED_NONE) {
			performSelection();
		}
		List<PlacementPart> all = new ArrayList<>();
		all.add((PlacementPart) getSourceEditPart());
		SheetsSurface.selected(getCurrentViewer()).stream().filter(part -> !all.contains(part)).forEach(all::add);
		parts = all;
	}

	private List<Board.Move> moves() {
		Dimension delta = getDragMoveDelta();
		boolean oneWay = getCurrentInput().isShiftKeyDown();
		boolean across = !oneWay || Math.abs(delta.width) >= Math.abs(delta.height);
		double dx = across ? zoom.rounded(delta.width / zoom.pixelsPerMm()) : 0;
		double dy = !oneWay || !across ? zoom.rounded(delta.height / zoom.pixelsPerMm()) : 0;
		List<Board.Move> moves = new ArrayList<>();
		if (dx == 0 && dy == 0) {
			return moves;
		}
		for (PlacementPart part : parts) {
			moves.add(moved(part.placement(), dx, dy));
		}
		if (alt && moves.size() == 1) {
			Board.Move move = moves.get(0);
			return sheets.board().freePlace(move)
					.map(free -> List.of(
							new Board.Move(move.placement(), move.sheet(), free.x(), free.y(), move.turn())))
					.orElse(moves);
		}
		return moves;
	}

	/** To the sheet under its centre, if it is of the same stock; what is dropped elsewhere stays with its own. */
	private Board.Move moved(Placement placement, double dx, double dy) {
		Sheet own = (Sheet) placement.eContainer();
		Point corner = sheets.spread().corner(own);
		Point centre = new Point(corner.x() + placement.getX() + dx, corner.y() + placement.getY() + dy);
		Sheet target = sheets.spread().at(centre)
				.filter(other -> Objects.equals(other.getStock(), own.getStock())
						&& Objects.equals(other.getColour(), own.getColour()))
				.orElse(own);
		Point targetCorner = sheets.spread().corner(target);
		return new Board.Move(placement, target, CanvasZoom.plain(centre.x() - targetCorner.x()),
				CanvasZoom.plain(centre.y() - targetCorner.y()), placement.getTurn());
	}

	private void show() {
		gather();
		if (feedback == null) {
			feedback = new MoveFeedback(getCurrentViewer(), sheets);
		}
		feedback.show(parts, moves(), getLocation());
	}

	private void erase() {
		if (feedback != null) {
			feedback.erase();
			feedback = null;
		}
	}

	@Override
	public void deactivate() {
		erase();
		parts = List.of();
		super.deactivate();
	}
}
