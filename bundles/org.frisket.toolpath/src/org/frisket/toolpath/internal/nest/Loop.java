package org.frisket.toolpath.internal.nest;

import java.util.List;
import java.util.stream.IntStream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.locationtech.jts.index.intervalrtree.SortedPackedIntervalRTree;

/** A closed line as a polygon whose edges are found by their height, so that many places can be asked about. */
final class Loop {

	private final List<Point> points;
	/** Null until somebody asks. */
	private SortedPackedIntervalRTree edges;

	/** @param deviation in mm: how far the polygon may be from the line */
	Loop(Contour contour, double deviation) {
		points = contour.flattened(deviation);
	}

	private SortedPackedIntervalRTree edges() {
		if (edges == null) {
			edges = new SortedPackedIntervalRTree();
			for (int i = 0; i < points.size(); i++) {
				double from = points.get(i).y();
				double to = end(i).y();
				edges.insert(Math.min(from, to), Math.max(from, to), i);
			}
		}
		return edges;
	}

	private Point end(int edge) {
		return points.get(edge + 1 == points.size() ? 0 : edge + 1);
	}

	/** How often the line winds round a place (by crossings of a ray to the right); 0 for what it does not enclose. */
	int windings(Point place) {
		int[] sum = { 0 };
		edges().query(place.y(), place.y(), item -> {
			Point from = points.get((Integer) item);
			Point to = end((Integer) item);
			if (from.y() <= place.y() != to.y() <= place.y()) {
				double side = to.minus(from).cross(place.minus(from));
				// a ray downwards across the edge counts one way, upwards the other
				if (to.y() > from.y() && side > 0) {
					sum[0]++;
				} else if (to.y() < from.y() && side < 0) {
					sum[0]--;
				}
			}
		});
		return sum[0];
	}

	/** Whether a place is no farther than that from the line. */
	boolean isNear(Point place, double distance) {
		boolean[] near = { false };
		edges().query(place.y() - distance, place.y() + distance, item -> {
			if (!near[0]) {
				near[0] = distance(place, points.get((Integer) item), end((Integer) item)) <= distance;
			}
		});
		return near[0];
	}

	private static double distance(Point place, Point from, Point to) {
		Point way = to.minus(from);
		double square = way.dot(way);
		double t = square == 0 ? 0 : Math.max(0, Math.min(1, place.minus(from).dot(way) / square));
		return place.distance(from.towards(to, t));
	}

	/** A place well within, in the middle of the longest stretch at half the height. */
	Point inside() {
		double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
		double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
		double y = (top + bottom) / 2;
		double[] crossings = crossings(y);
		Point best = points.get(0);
		double widest = 0;
		for (int i = 1; i < crossings.length; i++) {
			double width = crossings[i] - crossings[i - 1];
			Point middle = new Point((crossings[i] + crossings[i - 1]) / 2, y);
			if (width > widest && windings(middle) != 0) {
				widest = width;
				best = middle;
			}
		}
		return best;
	}

	private double[] crossings(double y) {
		return IntStream.range(0, points.size())
				.filter(i -> points.get(i).y() <= y != end(i).y() <= y).mapToDouble(i -> {
					Point from = points.get(i);
					Point to = end(i);
					return from.x() + (to.x() - from.x()) * (y - from.y()) / (to.y() - from.y());
				}).sorted().toArray();
	}
}
