package org.frisket.geometry.snap;

import java.util.List;
import java.util.stream.Stream;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/**
 * The places of a moved thing that can be held.
 *
 * @param xs     held by vertical lines, in mm
 * @param ys     held by horizontal lines, in mm
 * @param points held by nodes
 */
public record SnapAnchors(List<Double> xs, List<Double> ys, List<Point> points) {

	public SnapAnchors {
		xs = List.copyOf(xs);
		ys = List.copyOf(ys);
		points = List.copyOf(points);
	}

	/** A point alone. */
	public static SnapAnchors of(Point point) {
		return new SnapAnchors(List.of(point.x()), List.of(point.y()), List.of(point));
	}

	/** The edges, the centre lines, the corners and the centre of a box; nothing of an empty one. */
	public static SnapAnchors of(Bounds box) {
		if (box.isEmpty()) {
			return new SnapAnchors(List.of(), List.of(), List.of());
		}
		Point centre = box.centre();
		return new SnapAnchors(List.of(box.minX(), centre.x(), box.maxX()), List.of(box.minY(), centre.y(), box.maxY()),
				List.of(new Point(box.minX(), box.minY()), new Point(box.maxX(), box.minY()),
						new Point(box.minX(), box.maxY()), new Point(box.maxX(), box.maxY()), centre));
	}

	/** A vertical line alone. */
	public static SnapAnchors vertical(double x) {
		return new SnapAnchors(List.of(x), List.of(), List.of());
	}

	/** A horizontal line alone. */
	public static SnapAnchors horizontal(double y) {
		return new SnapAnchors(List.of(), List.of(y), List.of());
	}

	/** These and the nodes of the moved thing. */
	public SnapAnchors with(List<Point> nodes) {
		return new SnapAnchors(xs, ys, Stream.concat(points.stream(), nodes.stream()).toList());
	}

	/** Only what can be held by going to the right or left. */
	public SnapAnchors acrossOnly() {
		return new SnapAnchors(xs, List.of(), List.of());
	}

	/** Only what can be held by going up or down. */
	public SnapAnchors downOnly() {
		return new SnapAnchors(List.of(), ys, List.of());
	}
}
