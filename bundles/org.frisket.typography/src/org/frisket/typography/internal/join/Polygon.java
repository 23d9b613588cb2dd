package org.frisket.typography.internal.join;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;

/** A flattened contour. */
final class Polygon {

	final double[] x;
	final double[] y;
	final Bounds bounds;

	Polygon(Contour contour, double deviation) {
		List<Point> corners = contour.flattened(deviation);
		x = new double[corners.size()];
		y = new double[corners.size()];
		Bounds box = Bounds.EMPTY;
		for (int i = 0; i < x.length; i++) {
			x[i] = corners.get(i).x();
			y[i] = corners.get(i).y();
			box = box.with(corners.get(i));
		}
		bounds = box;
	}

	/** Whether the two cross, touch, or one holds the other; then they are taken to be one thing. */
	boolean isOneWith(Polygon other) {
		return bounds.intersects(other.bounds)
				&& (holds(other.x[0], other.y[0]) || other.holds(x[0], y[0]) || crosses(other));
	}

	private boolean holds(double px, double py) {
		boolean inside = false;
		for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
			if (y[i] > py != y[j] > py && px < x[i] + (x[j] - x[i]) * (py - y[i]) / (y[j] - y[i])) {
				inside = !inside;
			}
		}
		return inside;
	}

	private boolean crosses(Polygon other) {
		for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
			Bounds edge = new Bounds(Math.min(x[i], x[j]), Math.min(y[i], y[j]), Math.max(x[i], x[j]),
					Math.max(y[i], y[j]));
			if (edge.intersects(other.bounds) && other.isCrossedBy(x[j], y[j], x[i], y[i])) {
				return true;
			}
		}
		return false;
	}

	private boolean isCrossedBy(double ax, double ay, double bx, double by) {
		for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
			if (side(ax, ay, bx, by, x[j], y[j]) * side(ax, ay, bx, by, x[i], y[i]) <= 0
					&& side(x[j], y[j], x[i], y[i], ax, ay) * side(x[j], y[j], x[i], y[i], bx, by) <= 0
					&& Math.max(Math.min(ax, bx), Math.min(x[i], x[j])) <= Math.min(Math.max(ax, bx),
							Math.max(x[i], x[j]))
					&& Math.max(Math.min(ay, by), Math.min(y[i], y[j])) <= Math.min(Math.max(ay, by),
							Math.max(y[i], y[j]))) {
				return true;
			}
		}
		return false;
	}

	private static double side(double ax, double ay, double bx, double by, double px, double py) {
		return Math.signum((bx - ax) * (py - ay) - (by - ay) * (px - ax));
	}
}
