package org.frisket.geometry.axis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * A stretch of an axis between two nodes, which may be the same one.
 *
 * @param points from the one to the other, both with them
 */
record Stroke(int from, int to, List<AxisPoint> points) {

	Stroke {
		points = List.copyOf(points);
	}

	double length() {
		double length = 0;
		for (int i = 1; i < points.size(); i++) {
			length += points.get(i - 1).place().distance(points.get(i).place());
		}
		return length;
	}

	AxisPoint first() {
		return points.get(0);
	}

	AxisPoint last() {
		return points.get(points.size() - 1);
	}

	Stroke reversed() {
		List<AxisPoint> turned = new ArrayList<>(points);
		Collections.reverse(turned);
		return new Stroke(to, from, turned);
	}

	/** This one and then another that begins where it ends. */
	Stroke then(Stroke next) {
		List<AxisPoint> all = new ArrayList<>(points);
		all.addAll(next.points.subList(1, next.points.size()));
		return new Stroke(from, next.to, all);
	}

	/** Without its last stretch, of a length in mm; at least its first and one more point stay. */
	Stroke shortened(double distance) {
		double left = distance;
		for (int i = points.size() - 1; i > 0; i--) {
			double step = points.get(i).place().distance(points.get(i - 1).place());
			if (step >= left) {
				double t = step == 0 ? 0 : left / step;
				AxisPoint a = points.get(i);
				AxisPoint b = points.get(i - 1);
				List<AxisPoint> kept = new ArrayList<>(points.subList(0, i));
				kept.add(new AxisPoint(a.place().towards(b.place(), t), a.radius() + (b.radius() - a.radius()) * t));
				return new Stroke(from, to, kept);
			}
			left -= step;
		}
		return this;
	}

	/** Direction of travel at its end, taken over a distance in mm; length 1. */
	Point direction(double distance) {
		Point end = last().place();
		double gone = 0;
		for (int i = points.size() - 1; i > 0; i--) {
			gone += points.get(i).place().distance(points.get(i - 1).place());
			if (gone >= distance || i == 1) {
				return end.minus(points.get(i - 1).place()).unit();
			}
		}
		return Point.ORIGIN;
	}

	/** With the small zigzag taken out that the samples of the boundary leave; the ends stay. */
	Stroke smoothed() {
		List<AxisPoint> smooth = points;
		for (int pass = 0; pass < 4; pass++) {
			List<AxisPoint> next = new ArrayList<>(smooth);
			for (int i = 1; i + 1 < smooth.size(); i++) {
				Point ends = smooth.get(i - 1).place().towards(smooth.get(i + 1).place(), 0.5);
				next.set(i, new AxisPoint(smooth.get(i).place().towards(ends, 0.5), smooth.get(i).radius()));
			}
			smooth = next;
		}
		return new Stroke(from, to, smooth);
	}
}
