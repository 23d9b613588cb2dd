package org.frisket.ui.bench.internal.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.gef.tools.SelectEditPartTracker;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.frisket.editing.MoveElements;
import org.frisket.geometry.Transform;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.figures.GhostFigure;
import org.frisket.ui.bench.internal.figures.TagFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.GroupSelection;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * Selects an element with its group, and moves all selected ones when dragged. The distance is taken to a round step
 * that is just finer than a pixel; Shift keeps to one direction, Escape gives up.
 */
public final class MoveTracker extends SelectEditPartTracker {

	private static final int TAG_DISTANCE_PX = 18;

	private final CanvasZoom zoom;
	private final List<GhostFigure> ghosts = new ArrayList<>();
	private TagFigure tag;

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
			showGhosts();
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			eraseGhosts();
			MoveElements move = new MoveElements(Selection.elements(getCurrentViewer()), dx(), dy());
			if (dx() != 0 || dy() != 0) {
				executeCommand(new EditCommand(move));
			}
			return true;
		}
		if (stateTransition(STATE_DRAG, STATE_TERMINAL)) {
			performSelection();
			return true;
		}
		return super.handleButtonUp(button);
	}

	private double dx() {
		return keepsDirection() && Math.abs(delta().width) < Math.abs(delta().height) ? 0 : rounded(delta().width);
	}

	private double dy() {
		return keepsDirection() && Math.abs(delta().height) <= Math.abs(delta().width) ? 0 : rounded(delta().height);
	}

	private boolean keepsDirection() {
		return getCurrentInput().isShiftKeyDown();
	}

	private Dimension delta() {
		return getDragMoveDelta();
	}

	/** Pixels as mm, to the next power of ten below the size of a pixel. */
	private double rounded(int px) {
		double mmPerPixel = 1 / zoom.pixelsPerMm();
		double steps = Math.pow(10, -Math.floor(Math.log10(mmPerPixel)));
		return Math.round(px * mmPerPixel * steps) / steps;
	}

	private void showGhosts() {
		if (ghosts.isEmpty()) {
			for (ElementPart part : Selection.movableParts(getCurrentViewer())) {
				GhostFigure ghost = new GhostFigure(zoom);
				scaledFeedback().add(ghost);
				ghosts.add(ghost);
			}
			tag = new TagFigure();
			addFeedback(tag);
		}
		List<ElementPart> parts = Selection.movableParts(getCurrentViewer());
		for (int i = 0; i < Math.min(parts.size(), ghosts.size()); i++) {
			ghosts.get(i).show(parts.get(i).picture(), parts.get(i).shift().then(Transform.translation(dx(), dy())));
		}
		tag.setText(LengthText.place(dx(), dy()));
		Point place = getLocation().getTranslated(TAG_DISTANCE_PX, TAG_DISTANCE_PX);
		tag.getParent().translateToRelative(place);
		tag.setBounds(new org.eclipse.draw2d.geometry.Rectangle(place, tag.getPreferredSize()));
	}

	private void eraseGhosts() {
		for (GhostFigure ghost : ghosts) {
			if (ghost.getParent() != null) {
				ghost.getParent().remove(ghost);
			}
		}
		ghosts.clear();
		if (tag != null) {
			removeFeedback(tag);
			tag = null;
		}
	}

	private IFigure scaledFeedback() {
		return LayerManager.Helper.find(getSourceEditPart()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}

	@Override
	public void deactivate() {
		eraseGhosts();
		super.deactivate();
	}
}
