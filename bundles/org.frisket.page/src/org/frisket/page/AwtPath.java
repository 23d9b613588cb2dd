package org.frisket.page;

import java.awt.geom.Path2D;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Segment;

/** Contours as a path that Java's own graphics can paint. */
public final class AwtPath {

	private AwtPath() {
	}

	/** In the same coordinates, to be filled by the nonzero rule; open contours stay open. */
	public static Path2D of(List<Contour> contours) {
		Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
		for (Contour contour : contours) {
			if (contour.isEmpty()) {
				continue;
			}
			path.moveTo(contour.start().x(), contour.start().y());
			for (Segment segment : contour.segments()) {
				if (segment instanceof Cubic c) {
					path.curveTo(c.control1().x(), c.control1().y(), c.control2().x(), c.control2().y(), c.end().x(),
							c.end().y());
				} else {
					path.lineTo(segment.end().x(), segment.end().y());
				}
			}
			if (contour.isClosed()) {
				path.closePath();
			}
		}
		return path;
	}
}
