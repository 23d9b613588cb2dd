package org.frisket.ui.bench.internal.figures;

import org.eclipse.draw2d.Figure;
import org.eclipse.gef.editparts.ZoomListener;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/** A figure in the frame of the job that is told of the zoom for as long as it is seen. */
public abstract class ZoomedFigure extends Figure {

	protected final CanvasZoom zoom;
	private final ZoomListener zoomListener = factor -> zoomed();

	protected ZoomedFigure(CanvasZoom zoom) {
		this.zoom = zoom;
	}

	/** Things are shown at another scale. */
	protected abstract void zoomed();

	@Override
	public void addNotify() {
		super.addNotify();
		zoom.addListener(zoomListener);
	}

	@Override
	public void removeNotify() {
		zoom.removeListener(zoomListener);
		super.removeNotify();
	}
}
