package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Takes the noise out of points about a pixel apart: each goes part of the way to the middle of its neighbours, and then a
 * little more than that back, which leaves what is longer than some points as it is. A circle does not shrink (the two
 * factors of Taubin, "A signal processing approach to fair surface design", 1995; from memory).
 */
final class Calming {

	private static final double IN = 0.5;
	private static final double OUT = -0.53;
	private static final int ROUNDS = 3;

	private Calming() {
	}

	/** Of a run, whose ends stay. */
	static List<Point> run(List<Point> points) {
		return calmed(points, false);
	}

	/** Of a ring, whose first point is not repeated at the end. */
	static List<Point> ring(List<Point> points) {
		return calmed(points, true);
	}

	private static List<Point> calmed(List<Point> points, boolean closed) {
		if (points.size() < 4) {
			return points;
		}
		Point[] now = points.toArray(Point[]::new);
		for (int round = 0; round < ROUNDS; round++) {
			now = moved(now, IN, closed);
			now = moved(now, OUT, closed);
		}
		return new ArrayList<>(List.of(now));
	}

	private static Point[] moved(Point[] points, double factor, boolean closed) {
		Point[] moved = points.clone();
		int last = points.length - 1;
		for (int i = closed ? 0 : 1; i < (closed ? points.length : last); i++) {
			Point middle = points[i == 0 ? last : i - 1].towards(points[i == last ? 0 : i + 1], 0.5);
			moved[i] = points[i].towards(middle, factor);
		}
		return moved;
	}
}
