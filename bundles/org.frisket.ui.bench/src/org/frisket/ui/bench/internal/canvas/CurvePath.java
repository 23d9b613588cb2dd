package org.frisket.ui.bench.internal.canvas;

import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.Path;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Transform;

/** True curves for the window system. */
public final class CurvePath {

	private CurvePath() {
	}

	/**
	 * An outline as a path of the window system, cubic curves staying cubic curves. The caller disposes it.
	 *
	 * @param toPixels maps millimetres to the units in which the path is painted
	 */
	public static Path of(Device device, Outline outline, Transform toPixels) {
		Path path = new Path(device);
		for (Contour contour : outline.contours()) {
			if (!contour.isEmpty()) {
				add(path, contour.transformed(toPixels));
			}
		}
		return path;
	}

	private static void add(Path path, Contour contour) {
		Point start = contour.start();
		path.moveTo((float) start.x(), (float) start.y());
		for (Segment segment : contour.segments()) {
			Point end = segment.end();
			if (segment instanceof Cubic cubic) {
				path.cubicTo((float) cubic.control1().x(), (float) cubic.control1().y(), (float) cubic.control2().x(),
						(float) cubic.control2().y(), (float) end.x(), (float) end.y());
			} else {
				path.lineTo((float) end.x(), (float) end.y());
			}
		}
		if (contour.isClosed()) {
			path.close();
		}
	}
}
