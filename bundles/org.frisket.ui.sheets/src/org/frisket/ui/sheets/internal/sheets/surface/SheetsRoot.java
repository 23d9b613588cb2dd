package org.frisket.ui.sheets.internal.sheets.surface;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.canvas.SharpLayers;
import org.frisket.ui.bench.internal.tools.PanTracker;

/** The root of the surface, with the zoom of the bench. */
final class SheetsRoot extends ScalableFreeformRootEditPart {

	private final CanvasZoom zoom;

	SheetsRoot() {
		zoom = new CanvasZoom(getZoomManager(), (Viewport) getFigure());
	}

	CanvasZoom zoom() {
		return zoom;
	}

	@Override
	protected ScalableFreeformLayeredPane createScaledLayers() {
		ScalableFreeformLayeredPane layers = new SharpLayers();
		layers.add(createGridLayer(), GRID_LAYER);
		layers.add(getPrintableLayers(), PRINTABLE_LAYERS);
		FreeformLayer feedback = new FreeformLayer();
		feedback.setEnabled(false);
		layers.add(feedback, SCALED_FEEDBACK_LAYER);
		return layers;
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return PanTracker.isAskedFor(request) ? new PanTracker(zoom) : new BoxTracker(zoom);
	}
}
