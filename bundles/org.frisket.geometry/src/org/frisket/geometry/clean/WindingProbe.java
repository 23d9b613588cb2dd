package org.frisket.geometry.clean;

import java.util.List;
import java.util.function.Predicate;

import org.frisket.geometry.Point;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;

/** Counts the windings at a place by a ray to the left. */
final class WindingProbe {

	private static final int LARGEST = 4096;

	private final Edge[][] stripes;
	private final double top;
	private final double height;

	WindingProbe(List<Edge> edges) {
		double low = Double.POSITIVE_INFINITY;
		double high = Double.NEGATIVE_INFINITY;
		for (Edge edge : edges) {
			low = Math.min(low, edge.minY());
			high = Math.max(high, edge.maxY());
		}
		int count = Math.max(1, Math.min(LARGEST, edges.size() / 8));
		top = low;
		height = (high - low) / count;
		int[] size = new int[count];
		for (Edge edge : edges) {
			for (int i = stripe(edge.minY(), count); i <= stripe(edge.maxY(), count); i++) {
				size[i]++;
			}
		}
		stripes = new Edge[count][];
		for (int i = 0; i < count; i++) {
			stripes[i] = new Edge[size[i]];
		}
		for (Edge edge : edges) {
			for (int i = stripe(edge.minY(), count); i <= stripe(edge.maxY(), count); i++) {
				stripes[i][--size[i]] = edge;
			}
		}
	}

	private int stripe(double y, int count) {
		return height > 0 ? Math.max(0, Math.min(count - 1, (int) ((y - top) / height))) : 0;
	}

	/** Windings at a node that none of the counted edges touches. */
	int at(Node place, Predicate<Edge> counted) {
		double x = place.point.x();
		double y = place.point.y();
		int winding = 0;
		for (Edge edge : stripes[stripe(y, stripes.length)]) {
			boolean startBelow = edge.start.point.y() <= y;
			boolean endBelow = edge.end.point.y() <= y;
			if (startBelow == endBelow || !counted.test(edge)) {
				continue;
			}
			double startX = edge.start.point.x();
			double endX = edge.end.point.x();
			if (Math.min(startX, endX) > x || Math.max(startX, endX) >= x && !leftOf(edge, place, startBelow)) {
				continue;
			}
			// a ray to the left is crossed downwards by what runs counter-clockwise round the place
			winding += startBelow ? -edge.winding : edge.winding;
		}
		return winding;
	}

	/** Whether the one-way polyline crosses the height of the place to the left of it. */
	private static boolean leftOf(Edge edge, Node place, boolean rising) {
		int low = 0;
		int high = edge.corners() - 1;
		while (high - low > 1) {
			int middle = (low + high) >>> 1;
			if (edge.corner(middle).y() <= place.point.y() == rising) {
				low = middle;
			} else {
				high = middle;
			}
		}
		Point from = edge.corner(low);
		Point to = edge.corner(high);
		int turn = Orientation.index(new Coordinate(from.x(), from.y()), new Coordinate(to.x(), to.y()),
				place.coordinate);
		// going up, a place to the right of the chord has the chord on its left
		return turn == (rising ? Orientation.CLOCKWISE : Orientation.COUNTERCLOCKWISE);
	}
}
