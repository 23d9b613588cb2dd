package org.frisket.geometry.nodes;

import java.util.Comparator;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * The place of a path nearest to a point.
 *
 * @param t        parameter on the segment, from 0 to 1
 * @param place    on the path
 * @param distance from the point, in mm
 */
public record NearestOnPath(SegmentAt segment, double t, Point place, double distance) {

	private static final int LOOKS = 32;
	private static final int NARROWINGS = 75;

	/** The nearest place; empty if the path has no segment. */
	public static Optional<NearestOnPath> of(NodePath path, Point point) {
		NearestOnPath best = null;
		for (SegmentAt at : path.segments()) {
			Segment segment = path.segment(at);
			if (best != null && away(hull(segment), point) >= best.distance) {
				continue;
			}
			double t = nearest(segment, point);
			double distance = segment.at(t).distance(point);
			if (best == null || distance < best.distance) {
				best = new NearestOnPath(at, t, segment.at(t), distance);
			}
		}
		return Optional.ofNullable(best);
	}

	/** The nearest of the nodes no farther than {@code reach} mm. */
	public static Optional<NodeAt> node(NodePath path, Point point, double reach) {
		return path.nodes().stream().filter(at -> path.node(at).place().distance(point) <= reach)
				.min(Comparator.comparingDouble(at -> path.node(at).place().distance(point)));
	}

	/** The box around the control points, which the curve does not leave. */
	private static Bounds hull(Segment segment) {
		Bounds ends = Bounds.of(segment.start()).with(segment.end());
		return segment instanceof Cubic cubic ? ends.with(cubic.control1()).with(cubic.control2()) : ends;
	}

	private static double away(Bounds box, Point point) {
		double dx = Math.max(0, Math.max(box.minX() - point.x(), point.x() - box.maxX()));
		double dy = Math.max(0, Math.max(box.minY() - point.y(), point.y() - box.maxY()));
		return Math.hypot(dx, dy);
	}

	private static double nearest(Segment segment, Point point) {
		if (segment instanceof Line line) {
			Point way = line.end().minus(line.start());
			double square = way.dot(way);
			return square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(line.start()).dot(way) / square));
		}
		double best = 0;
		double bestDistance = segment.start().distance(point);
		for (int i = 0; i < LOOKS; i++) {
			double from = (double) i / LOOKS;
			double to = (double) (i + 1) / LOOKS;
			// a tight bend may hide the foot between places that are all farther away, but not outside their hull
			if (away(hull(segment.between(from, to)), point) < bestDistance) {
				double t = narrowed(segment, point, from, to);
				double distance = segment.at(t).distance(point);
				if (distance < bestDistance) {
					best = t;
					bestDistance = distance;
				}
			}
		}
		return best;
	}

	/** The foot between two parameters with one dip at most between them, by thirds. */
	private static double narrowed(Segment segment, Point point, double from, double to) {
		double low = from;
		double high = to;
		for (int i = 0; i < NARROWINGS; i++) {
			double first = low + (high - low) / 3;
			double second = high - (high - low) / 3;
			if (segment.at(first).distance(point) <= segment.at(second).distance(point)) {
				high = second;
			} else {
				low = first;
			}
		}
		double middle = (low + high) / 2;
		double atMiddle = segment.at(middle).distance(point);
		return segment.at(from).distance(point) <= atMiddle ? from
				: segment.at(to).distance(point) <= atMiddle ? to : middle;
	}
}
