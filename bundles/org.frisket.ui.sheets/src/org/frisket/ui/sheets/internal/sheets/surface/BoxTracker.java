package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.tools.AbstractTool;
import org.eclipse.jface.viewers.StructuredSelection;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.MarqueeFigure;

/** Gathers what a box encloses; with Shift it adds to the selection. A click makes a sheet the current one. */
final class BoxTracker extends AbstractTool implements DragTracker {

	private final CanvasZoom zoom;
	private MarqueeFigure box;

	BoxTracker(CanvasZoom zoom) {
		this.zoom = zoom;
	}

	@Override
	protected String getCommandName() {
		return REQ_SELECTION;
	}

	@Override
	protected boolean handleButtonDown(int button) {
		if (button == 1) {
			stateTransition(STATE_INITIAL, STATE_DRAG);
		} else {
			setState(STATE_TERMINAL);
		}
		return true;
	}

	@Override
	protected boolean handleDragStarted() {
		return stateTransition(STATE_DRAG, STATE_DRAG_IN_PROGRESS);
	}

	@Override
	protected boolean handleDragInProgress() {
		if (isInState(STATE_DRAG_IN_PROGRESS)) {
			if (box == null) {
				box = new MarqueeFigure();
				addFeedback(box);
			}
			Rectangle bounds = new Rectangle(getStartLocation(), getLocation());
			box.getParent().translateToRelative(bounds);
			box.setBounds(bounds);
		}
		return true;
	}

	@Override
	protected boolean handleButtonUp(int button) {
		if (stateTransition(STATE_DRAG_IN_PROGRESS, STATE_TERMINAL)) {
			erase();
			List<EditPart> chosen = new ArrayList<>();
			if (getCurrentInput().isShiftKeyDown()) {
				SheetsSurface.selected(getCurrentViewer()).forEach(chosen::add);
			}
			gathered().stream().filter(part -> !chosen.contains(part)).forEach(chosen::add);
			getCurrentViewer().setSelection(new StructuredSelection(chosen));
		} else if (stateTransition(STATE_DRAG, STATE_TERMINAL)) {
			SheetsPart sheets = (SheetsPart) getCurrentViewer().getContents();
			sheets.spread().at(zoom.toMm(getLocation().x, getLocation().y)).ifPresent(sheets::setCurrent);
			if (!getCurrentInput().isShiftKeyDown()) {
				getCurrentViewer().deselectAll();
			}
		}
		return true;
	}

	private List<PlacementPart> gathered() {
		Point from = zoom.toMm(getStartLocation().x, getStartLocation().y);
		Bounds all = Bounds.of(from).with(zoom.toMm(getLocation().x, getLocation().y));
		return SheetsSurface.parts(getCurrentViewer()).stream().filter(PlacementPart::isShown).filter(part -> {
			Bounds own = part.figure().box();
			return all.contains(new Point(own.minX(), own.minY())) && all.contains(new Point(own.maxX(), own.maxY()));
		}).toList();
	}

	private void erase() {
		if (box != null) {
			removeFeedback(box);
			box = null;
		}
	}

	@Override
	public void commitDrag() {
		// nothing is committed: the box only selects
	}

	@Override
	public void deactivate() {
		erase();
		super.deactivate();
	}
}
