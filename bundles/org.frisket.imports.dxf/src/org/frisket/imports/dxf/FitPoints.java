package org.frisket.imports.dxf;

import java.util.List;

import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;

/**
 * A curve through points, for splines that a file describes by them alone: the natural cubic spline over the lengths of
 * the chords (de Boor, A Practical Guide to Splines, chapter 4; from memory).
 */
final class FitPoints {

	private FitPoints() {
	}

	/** A new contour through the points; neighbours have to differ. */
	static void add(OutlineBuilder builder, List<Point> points) {
		int n = points.size() - 1;
		double[] h = new double[n];
		for (int i = 0; i < n; i++) {
			h[i] = points.get(i).distance(points.get(i + 1));
		}
		Point[] slopes = slopes(points, h);
		builder.moveTo(points.get(0));
		for (int i = 0; i < n; i++) {
			builder.cubicTo(points.get(i).plus(slopes[i].times(h[i] / 3)),
					points.get(i + 1).minus(slopes[i + 1].times(h[i] / 3)), points.get(i + 1));
		}
	}

	/** The tridiagonal system for equal second derivatives at the joints, and none at the ends. */
	private static Point[] slopes(List<Point> points, double[] h) {
		int n = h.length;
		double[] upper = new double[n + 1];
		Point[] right = new Point[n + 1];
		Point[] chord = new Point[n];
		for (int i = 0; i < n; i++) {
			chord[i] = points.get(i + 1).minus(points.get(i)).times(1 / h[i]);
		}
		upper[0] = 0.5;
		right[0] = chord[0].times(1.5);
		for (int i = 1; i <= n; i++) {
			double below = i == n ? 1 : h[i];
			double diagonal = i == n ? 2 : 2 * (h[i - 1] + h[i]);
			Point value = i == n ? chord[n - 1].times(3)
					: chord[i - 1].times(3 * h[i]).plus(chord[i].times(3 * h[i - 1]));
			double pivot = diagonal - below * upper[i - 1];
			upper[i] = i == n ? 0 : h[i - 1] / pivot;
			right[i] = value.minus(right[i - 1].times(below)).times(1 / pivot);
		}
		for (int i = n - 1; i >= 0; i--) {
			right[i] = right[i].minus(right[i + 1].times(upper[i]));
		}
		return right;
	}
}
