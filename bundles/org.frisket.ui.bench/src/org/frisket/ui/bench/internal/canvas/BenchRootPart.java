package org.frisket.ui.bench.internal.canvas;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.LayeredPane;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.Request;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;
import org.frisket.ui.bench.internal.looks.LookLayer;
import org.frisket.ui.bench.internal.rulers.GuideLayer;
import org.frisket.ui.bench.internal.tools.MarqueeTracker;

/** The root of the bench: sharp layers, own marquee, own zoom. */
public final class BenchRootPart extends ScalableFreeformRootEditPart {

	private final CanvasZoom zoom;
	private LookLayer lookLayer;

	public BenchRootPart() {
		zoom = new CanvasZoom(getZoomManager(), (Viewport) getFigure());
	}

	public CanvasZoom zoom() {
		return zoom;
	}

	/** Above the job: what the present look writes beside it. */
	public LookLayer lookLayer() {
		return lookLayer;
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

	/** Guides lie over the elements, what a look writes over them, and the handles over all. */
	@Override
	protected void createLayers(LayeredPane layers) {
		super.createLayers(layers);
		lookLayer = new LookLayer();
		layers.add(lookLayer, LookLayer.class, 1);
		layers.add(new GuideLayer(this::zoom), GuideLayer.KEY, 1);
	}

	@Override
	public DragTracker getDragTracker(Request request) {
		return new MarqueeTracker();
	}
}
