package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;
import org.frisket.model.Job;
import org.frisket.model.Placement;
import org.frisket.model.Sheet;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** All sheets of a job; its children are the copies of parts on them. */
final class SheetsPart extends AbstractGraphicalEditPart {

	/** What is shown: another one for each job. @param job null if there is none */
	record Content(Job job, Board board) {

		List<Sheet> sheets() {
			return job == null ? List.of() : job.getSheets();
		}
	}

	private Spread spread = new Spread(List.of());
	/** Of a layout that is not made yet; null while the sheets are seen as they are. */
	private Spread plan;
	private Sheet current;

	SheetsPart(Content content) {
		setModel(content);
	}

	Content content() {
		return (Content) getModel();
	}

	Board board() {
		return content().board();
	}

	Spread spread() {
		return spread;
	}

	/** Where the sheets lie that are seen. */
	Spread shownSpread() {
		return plan == null ? spread : plan;
	}

	boolean isPlanShown() {
		return plan != null;
	}

	/** Shows sheets of a layout that is not made yet, and no parts. */
	void showPlan(Spread planned) {
		plan = planned;
		for (Object child : getChildren()) {
			((PlacementPart) child).figure().setVisible(false);
		}
		figure().show(planned, null);
	}

	CanvasZoom zoom() {
		return ((SheetsRoot) getRoot()).zoom();
	}

	/** The sheet that was clicked last, or the first one; null if there is none. */
	Sheet current() {
		List<Sheet> sheets = content().sheets();
		return current != null && sheets.contains(current) ? current : sheets.isEmpty() ? null : sheets.get(0);
	}

	void setCurrent(Sheet sheet) {
		current = sheet;
		for (Object child : getChildren()) {
			((PlacementPart) child).refresh();
		}
		figure().show(spread, current());
	}

	@Override
	protected IFigure createFigure() {
		return new SheetsFigure(zoom(), board());
	}

	SheetsFigure figure() {
		return (SheetsFigure) getFigure();
	}

	@Override
	protected List<Placement> getModelChildren() {
		List<Placement> placements = new ArrayList<>();
		content().sheets().forEach(sheet -> placements.addAll(sheet.getPlacements()));
		return placements;
	}

	/** Brings all up to date with the job and with what is known of its parts. */
	void update() {
		plan = null;
		spread = new Spread(content().sheets());
		refresh();
		for (Object child : getChildren()) {
			((PlacementPart) child).refresh();
		}
		figure().show(spread, current());
	}

	@Override
	protected void createEditPolicies() {
		// what is done on sheets is done by trackers
	}

	@Override
	@SuppressWarnings("rawtypes")
	public Object getAdapter(Class key) {
		return null;
	}
}
