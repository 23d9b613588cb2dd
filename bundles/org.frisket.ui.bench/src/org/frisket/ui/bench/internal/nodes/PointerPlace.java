package org.frisket.ui.bench.internal.nodes;

import org.eclipse.gef.EditPartViewer;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;

/**
 * Where a node, a handle or a point of the pen comes to lie for a place of the pointer. All of them pass through here.
 */
public final class PointerPlace {

	private PointerPlace() {
	}

	/**
	 * The place meant by one in mm of the job: the nearest on whole steps, which are the power of ten just finer than a
	 * pixel.
	 *
	 * @param viewer the bench on which it is
	 */
	public static Point meant(EditPartViewer viewer, CanvasZoom zoom, Point mm) {
		double steps = Math.pow(10, -Math.floor(Math.log10(1 / zoom.pixelsPerMm())));
		return new Point(Math.rint(mm.x() * steps) / steps, Math.rint(mm.y() * steps) / steps);
	}
}
