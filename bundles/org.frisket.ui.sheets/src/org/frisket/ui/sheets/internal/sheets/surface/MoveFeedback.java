package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Transform;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.figures.GhostFigure;
import org.frisket.ui.bench.internal.tools.PointerTag;

/** Where dragged parts would come to lie, what is in their way, and how far they are from it. */
final class MoveFeedback {

	private final SheetsPart sheets;
	private final PointerTag tag;
	private final IFigure layer;
	private final List<GhostFigure> ghosts = new ArrayList<>();
	private final List<ObstacleFigure> obstacles = new ArrayList<>();

	MoveFeedback(EditPartViewer viewer, SheetsPart sheets) {
		this.sheets = sheets;
		tag = new PointerTag(viewer);
		layer = LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}

	/** @param parts the same ones at every step @param moves empty where nothing is moved */
	void show(List<PlacementPart> parts, List<Board.Move> moves, Point pointer) {
		if (moves.isEmpty()) {
			clear();
			tag.erase();
			return;
		}
		while (ghosts.size() < moves.size()) {
			GhostFigure ghost = new GhostFigure(sheets.zoom());
			layer.add(ghost);
			ghosts.add(ghost);
		}
		obstacles.forEach(layer::remove);
		obstacles.clear();
		double nearest = Double.POSITIVE_INFINITY;
		boolean overlaps = false;
		for (int i = 0; i < moves.size(); i++) {
			Board.Move move = moves.get(i);
			ghosts.get(i).show(parts.get(i).figure().picture().shape(),
					sheets.spread().placed(move.sheet(), move.x(), move.y(), move.turn()));
		}
		for (Board.Obstacle obstacle : sheets.board().obstacles(moves)) {
			overlaps |= !obstacle.overlaps().isEmpty();
			nearest = Math.min(nearest, obstacle.distance());
			add(obstacle);
		}
		Board.Move first = moves.get(0);
		String place = LengthText.place(first.x(), first.y());
		tag.show(overlaps ? NLS.bind(Messages.MoveFeedback_overlaps, place)
				: Double.isInfinite(nearest) ? place
						: NLS.bind(Messages.MoveFeedback_near, place, LengthText.of(nearest)),
				pointer);
	}

	private void add(Board.Obstacle obstacle) {
		if (obstacle.overlaps().isEmpty() && obstacle.from() == null) {
			return;
		}
		org.frisket.geometry.Point corner = sheets.spread().corner(obstacle.sheet());
		ObstacleFigure figure = new ObstacleFigure(sheets.zoom(), obstacle,
				Transform.translation(corner.x(), corner.y()));
		layer.add(figure);
		obstacles.add(figure);
	}

	private void clear() {
		ghosts.forEach(layer::remove);
		ghosts.clear();
		obstacles.forEach(layer::remove);
		obstacles.clear();
	}

	void erase() {
		clear();
		tag.erase();
	}
}
