package org.frisket.geometry.measure;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;

/**
 * Where the area of a region has its centre, by Green's theorem on the curves themselves: one half of the integral of
 * x² dy along the contours is the area's moment about the y axis. Along a cubic that integrand is a polynomial of degree
 * 8, for which Gauss-Legendre quadrature with five points is exact, so that only rounding is left.
 */
final class Moments {

	/** Of Legendre's polynomial of degree 5, on (-1, 1); Abramowitz and Stegun, table 25.4. */
	private static final double[] NODES = { 0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640,
			-0.9061798459386640 };
	private static final double[] WEIGHTS = { 0.5688888888888889, 0.4786286704993665, 0.4786286704993665,
			0.2369268850561891, 0.2369268850561891 };

	private Moments() {
	}

	/** Empty for a region without area. */
	static Optional<Point> centre(Region region) {
		Bounds bounds = region.bounds();
		if (region.isEmpty() || bounds.isEmpty()) {
			return Optional.empty();
		}
		// about the middle: far from the origin digits would be lost
		Point origin = bounds.centre();
		double area = 0;
		double aboutY = 0;
		double aboutX = 0;
		for (Contour contour : region.contours()) {
			List<Segment> segments = contour.segments();
			for (Segment segment : segments) {
				area += segment.start().minus(origin).cross(segment.end().minus(origin)) / 2
						+ segment.areaTerm() - segment.start().cross(segment.end()) / 2;
				for (int i = 0; i < NODES.length; i++) {
					double t = (1 + NODES[i]) / 2;
					Point at = segment.at(t).minus(origin);
					Point along = segment.derivative(t);
					aboutY += WEIGHTS[i] / 4 * at.x() * at.x() * along.y();
					aboutX -= WEIGHTS[i] / 4 * at.y() * at.y() * along.x();
				}
			}
		}
		return area == 0 ? Optional.empty() : Optional.of(origin.plus(new Point(aboutY / area, aboutX / area)));
	}
}
