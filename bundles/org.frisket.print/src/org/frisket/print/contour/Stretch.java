package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * What lies between two corners of a ring, without the points that antialiasing has cut across them.
 *
 * @param line     the straight line that all points are near, if there is one, and the middle of the points
 * @param straight whether there is one
 */
record Stretch(List<Point> points, boolean straight, Point middle, Point line) {

	/** @param slack how far in pixels points may lie from a straight line */
	static Stretch between(Ring ring, int from, int to, double slack) {
		List<Point> points = new ArrayList<>();
		for (int i = from; i <= to; i++) {
			if (ring.way(from, i) >= Arm.GAP && ring.way(i, to) >= Arm.GAP) {
				points.add(ring.point(i));
			}
		}
		if (points.size() < 2) {
			return new Stretch(points, true, null, null);
		}
		return of(points, slack);
	}

	/** The line of least squares at right angles. */
	private static Stretch of(List<Point> points, double slack) {
		Point sum = Point.ORIGIN;
		for (Point point : points) {
			sum = sum.plus(point);
		}
		Point middle = sum.times(1.0 / points.size());
		double xx = 0;
		double xy = 0;
		double yy = 0;
		for (Point point : points) {
			Point d = point.minus(middle);
			xx += d.x() * d.x();
			xy += d.x() * d.y();
			yy += d.y() * d.y();
		}
		double angle = Math.atan2(2 * xy, xx - yy) / 2;
		Point line = new Point(Math.cos(angle), Math.sin(angle));
		double worst = 0;
		for (Point point : points) {
			worst = Math.max(worst, Math.abs(line.cross(point.minus(middle))));
		}
		return new Stretch(points, worst <= slack, middle, line);
	}

	/** Whether there is a line that says better where the corners are than what lies next to them. */
	boolean isLine() {
		return straight && line != null;
	}

	/** The place on the line nearest to a point. */
	Point nearest(Point point) {
		return middle.plus(line.times(point.minus(middle).dot(line)));
	}

	/** Where this line and another meet; not finite if they are parallel. */
	Point meeting(Stretch other) {
		return middle.plus(line.times(other.middle.minus(middle).cross(other.line) / line.cross(other.line)));
	}
}
