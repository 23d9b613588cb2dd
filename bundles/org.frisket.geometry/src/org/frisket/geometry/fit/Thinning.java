package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Drops points that say nothing: repeated ones, and those so close to the chord between their neighbours that the
 * shape stays the same. From each point kept, a chord reaches as far as the directions to all points passed agree on.
 */
final class Thinning {

	private final double deviation;

	/** @param deviation how far in mm a dropped point may lie from the chord */
	Thinning(double deviation) {
		this.deviation = deviation;
	}

	/** The points left of an open run; the first and the last one stay. */
	List<Point> open(List<Point> points) {
		List<Point> kept = new ArrayList<>();
		int anchor = 0;
		kept.add(points.get(0));
		while (anchor < points.size() - 1) {
			anchor = reach(points, anchor);
			kept.add(points.get(anchor));
		}
		while (kept.size() > 1 && kept.get(kept.size() - 2).distance(kept.get(kept.size() - 1)) <= deviation) {
			kept.remove(kept.size() - 2);
		}
		return kept;
	}

	/** The points left of a closed ring, whose first point is not repeated; it may itself be dropped. */
	List<Point> ring(List<Point> points) {
		List<Point> closed = new ArrayList<>(points);
		closed.add(points.get(0));
		List<Point> kept = open(closed);
		kept.remove(kept.size() - 1);
		int last = kept.size() - 1;
		if (last > 2 && onChord(kept.get(0), kept.get(last), kept.get(1))) {
			kept.remove(0);
		}
		return kept;
	}

	private boolean onChord(Point point, Point from, Point to) {
		Point chord = to.minus(from);
		Point way = point.minus(from);
		return way.dot(chord) >= 0 && way.dot(chord) <= chord.dot(chord)
				&& Math.abs(chord.unit().cross(way)) <= deviation;
	}

	private int reach(List<Point> points, int from) {
		Point anchor = points.get(from);
		Point axis = null;
		double low = Double.NEGATIVE_INFINITY;
		double high = Double.POSITIVE_INFINITY;
		double farthest = 0;
		int last = points.size() - 1;
		for (int i = from + 1; i <= last; i++) {
			Point way = points.get(i).minus(anchor);
			double distance = way.length();
			if (axis == null) {
				if (distance <= deviation) {
					continue;
				}
				axis = way.unit();
			}
			double direction = Math.atan2(axis.cross(way), axis.dot(way));
			if (direction < low || direction > high || distance < farthest) {
				return i - 1;
			}
			farthest = distance;
			double slack = Math.asin(Math.min(1, deviation / distance));
			low = Math.max(low, direction - slack);
			high = Math.min(high, direction + slack);
		}
		return last;
	}
}
