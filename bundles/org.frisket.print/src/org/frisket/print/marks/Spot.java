package org.frisket.print.marks;

import java.util.List;

import org.frisket.geometry.Point;

/**
 * An area by its first moments.
 *
 * @param centre of gravity @param area of it
 * @param xx     mean of the squared distance from the centre along x @param xy mixed @param yy along y
 */
record Spot(Point centre, double area, double xx, double xy, double yy) {

	/** Of a polygon, by Green's theorem. */
	static Spot of(List<Point> polygon) {
		double area = 0;
		double x = 0;
		double y = 0;
		double xx = 0;
		double xy = 0;
		double yy = 0;
		for (int i = 0; i < polygon.size(); i++) {
			Point a = polygon.get(i);
			Point b = polygon.get((i + 1) % polygon.size());
			double cross = a.cross(b);
			area += cross / 2;
			x += cross * (a.x() + b.x()) / 6;
			y += cross * (a.y() + b.y()) / 6;
			xx += cross * (a.x() * a.x() + a.x() * b.x() + b.x() * b.x()) / 12;
			yy += cross * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 12;
			xy += cross * (a.x() * b.y() + 2 * a.x() * a.y() + 2 * b.x() * b.y() + b.x() * a.y()) / 24;
		}
		Point centre = new Point(x / area, y / area);
		return new Spot(centre, Math.abs(area), xx / area - centre.x() * centre.x(), xy / area - centre.x() * centre.y(),
				yy / area - centre.y() * centre.y());
	}

	/** How large it is, whatever its form: a linear map changes it by the root of its determinant. */
	double size() {
		return Math.pow(Math.max(0, xx * yy - xy * xy), 0.25);
	}

	/** How much of it is near its centre: 1 for an ellipse, less for all else; no linear map changes it. */
	double fullness() {
		double size = size();
		return size == 0 ? 0 : area / (4 * Math.PI * size * size);
	}
}
