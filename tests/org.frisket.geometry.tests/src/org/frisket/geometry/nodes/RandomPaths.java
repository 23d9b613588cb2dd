package org.frisket.geometry.nodes;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** Paths of lines and cubics, open and closed, with coordinates that use every bit. */
final class RandomPaths {

	static final int ROUNDS = 300;

	private RandomPaths() {
	}

	static NodePath path(Random random) {
		List<Contour> contours = new ArrayList<>();
		int count = 1 + random.nextInt(3);
		for (int i = 0; i < count; i++) {
			contours.add(contour(random));
		}
		return NodePath.of(new Outline(contours));
	}

	private static Contour contour(Random random) {
		boolean closed = random.nextBoolean();
		int count = 3 + random.nextInt(5);
		Point first = point(random);
		Point start = first;
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			Point end = closed && i == count - 1 ? first : point(random);
			segments.add(random.nextInt(3) == 0 ? new Line(start, end)
					: new Cubic(start, point(random), point(random), end));
			start = end;
		}
		return closed ? Contour.closed(segments) : Contour.open(segments);
	}

	static Point point(Random random) {
		return new Point(random.nextDouble() * 200 - 50, random.nextDouble() * 200 - 50);
	}

	static SegmentAt segment(Random random, NodePath path) {
		return path.segments().get(random.nextInt(path.segments().size()));
	}

	static NodeAt node(Random random, NodePath path) {
		return path.nodes().get(random.nextInt(path.nodes().size()));
	}

	/** Largest distance of points along the path's curves from another path, looked at closely. */
	static double strays(NodePath from, NodePath to) {
		double farthest = 0;
		for (SegmentAt at : from.segments()) {
			for (int i = 0; i <= 20; i++) {
				Point point = from.segment(at).at(i / 20.0);
				farthest = Math.max(farthest, NearestOnPath.of(to, point).orElseThrow().distance());
			}
		}
		return farthest;
	}

	/** Largest distance of either from the other. */
	static double hausdorff(NodePath one, NodePath other) {
		return Math.max(strays(one, other), strays(other, one));
	}

	static double area(NodePath path) {
		return path.outline().contours().stream().mapToDouble(Contour::signedArea).sum();
	}
}
