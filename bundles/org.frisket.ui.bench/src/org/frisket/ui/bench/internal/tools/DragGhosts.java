package org.frisket.ui.bench.internal.tools;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Transform;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.GhostFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;

/** What would come of a drag: a ghost of each dragged element, and the measure beside the pointer. */
public final class DragGhosts {

	private final EditPartViewer viewer;
	private final CanvasZoom zoom;
	private final PointerTag tag;
	private final List<GhostFigure> ghosts = new ArrayList<>();

	public DragGhosts(EditPartViewer viewer, CanvasZoom zoom) {
		this.viewer = viewer;
		this.zoom = zoom;
		tag = new PointerTag(viewer);
	}

	/**
	 * Shows the ghosts of elements.
	 *
	 * @param parts   the same ones at every step of a drag
	 * @param map     from where they lie to where they would come to lie
	 * @param measure what the tag says
	 * @param pointer in pixels of the canvas
	 */
	public void show(List<ElementPart> parts, Transform map, String measure, Point pointer) {
		while (ghosts.size() < parts.size()) {
			GhostFigure ghost = new GhostFigure(zoom);
			layer().add(ghost);
			ghosts.add(ghost);
		}
		for (int i = 0; i < parts.size(); i++) {
			ghosts.get(i).show(parts.get(i).picture(), parts.get(i).shift().then(map));
		}
		tag.show(measure, pointer);
	}

	public void erase() {
		for (GhostFigure ghost : ghosts) {
			if (ghost.getParent() != null) {
				ghost.getParent().remove(ghost);
			}
		}
		ghosts.clear();
		tag.erase();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
	}
}
