package org.frisket.geometry.snap;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Point;

/** Finds the node nearest to a place: outwards from it along the x axis, until no nearer one can come. */
final class NearestNode {

	private final Point[] nodes;
	private final double[] xs;

	NearestNode(List<Point> points) {
		nodes = points.toArray(Point[]::new);
		Arrays.sort(nodes, Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
		xs = Arrays.stream(nodes).mapToDouble(Point::x).toArray();
	}

	/**
	 * The nearest node; of several equally near the leftmost, then the topmost; null if there is none within reach.
	 */
	Point to(Point place, double reach) {
		int start = Arrays.binarySearch(xs, place.x());
		int right = start < 0 ? -start - 1 : start;
		int left = right - 1;
		double least = reach;
		Point best = null;
		while (true) {
			double toLeft = left < 0 ? Double.POSITIVE_INFINITY : place.x() - xs[left];
			double toRight = right >= xs.length ? Double.POSITIVE_INFINITY : xs[right] - place.x();
			if (Math.min(toLeft, toRight) > least) {
				return best;
			}
			if (left < 0 && right >= xs.length) {
				return best;
			}
			Point node = nodes[toLeft <= toRight ? left-- : right++];
			double distance = node.distance(place);
			if (distance < least || distance == least && (best == null || precedes(node, best))) {
				least = distance;
				best = node;
			}
		}
	}

	private static boolean precedes(Point a, Point b) {
		return a.x() < b.x() || a.x() == b.x() && a.y() < b.y();
	}
}
