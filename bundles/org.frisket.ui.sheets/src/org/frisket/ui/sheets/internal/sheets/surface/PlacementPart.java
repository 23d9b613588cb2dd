package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.ui.bench.internal.tools.PanTracker;

/** A copy of a part on a sheet. One whose part is no more is not seen. */
final class PlacementPart extends AbstractGraphicalEditPart {

	PlacementPart(Placement placement) {
		setModel(placement);
	}

	Placement placement() {
		return (Placement) getModel();
	}

	private SheetsPart sheets() {
		return (SheetsPart) getParent();
	}

	@Override
	protected IFigure createFigure() {
		return new PlacementFigure(sheets().zoom());
	}

	PlacementFigure figure() {
		return (PlacementFigure) getFigure();
	}

	boolean isShown() {
		return figure().picture() != null && figure().isVisible();
	}

	@Override
	protected void refreshVisuals() {
		Sheet sheet = (Sheet) placement().eContainer();
		if (sheet == null) {
			return;
		}
		var picture = sheets().board().picture(placement());
		figure().setVisible(picture.isPresent());
		picture.ifPresent(shown -> figure().show(shown, sheets().spread().placeOf(placement()),
				sheets().board().colour(sheet), placement().isPinned()));
		PrintLayer prints = sheets().board().prints();
		figure().show(sheet == sheets().current() && prints.isSeen(sheet), prints.cutsShown());
	}

	@Override
	public void setSelected(int value) {
		super.setSelected(value);
		figure().setSelected(value != EditPart.SELECTED_NONE);
	}

	@Override
	public boolean isSelectable() {
		return super.isSelectable() && isShown();
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return PanTracker.isAskedFor(request) ? new PanTracker(sheets().zoom()) : new PlacementTracker(this);
	}

	@Override
	protected void createEditPolicies() {
		// what is done with parts is done by trackers
	}

	@Override
	@SuppressWarnings("rawtypes")
	public Object getAdapter(Class key) {
		return null;
	}
}
