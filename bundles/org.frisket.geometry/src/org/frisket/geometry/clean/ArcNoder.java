package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.locationtech.jts.algorithm.RobustLineIntersector;
import org.locationtech.jts.geom.Coordinate;

/**
 * Finds where arcs meet. Boxes are compared first; only arcs whose boxes overlap are flattened and compared chord by
 * chord, and a crossing of two chords is then moved on to the crossing of the two curves.
 */
final class ArcNoder {

	private final NodeIndex nodes;
	private final double deviation;
	private final boolean snapCorners;
	private final RobustLineIntersector intersector = new RobustLineIntersector();
	private final Coordinate a0 = new Coordinate();
	private final Coordinate a1 = new Coordinate();
	private final Coordinate b0 = new Coordinate();
	private final Coordinate b1 = new Coordinate();

	/**
	 * @param deviation   chords stay this close to their curve
	 * @param snapCorners also join arcs where a corner of one passes within the weld distance of the other
	 */
	ArcNoder(NodeIndex nodes, double deviation, boolean snapCorners) {
		this.nodes = nodes;
		this.deviation = deviation;
		this.snapCorners = snapCorners;
	}

	void node(List<Arc> arcs, Monitor monitor) {
		double reach = snapCorners ? nodes.weld() : 0;
		List<Arc> ordered = new ArrayList<>(arcs);
		ordered.sort(Comparator.comparingDouble(a -> a.minX));
		new BoxSweep(ordered, reach).run(monitor, (later, earlier) -> {
			Arc arc = ordered.get(later);
			Arc other = ordered.get(earlier);
			if (snapCorners || !onlyShareEnd(arc, other)) {
				int last = arc.chords(deviation);
				int otherLast = other.chords(deviation);
				compare(arc, 0, last, arc.start.point, arc.end.point, other, 0, otherLast, other.start.point,
						other.end.point, reach);
			}
			return false;
		});
	}

	/** True if the boxes overlap in no more than a side, where a one-way arc can only have its end. */
	private static boolean onlyShareEnd(Arc a, Arc b) {
		Node shared = a.touches(b.start) ? b.start : a.touches(b.end) ? b.end : null;
		if (shared == null) {
			return false;
		}
		boolean sideInX = Math.max(a.minX, b.minX) == Math.min(a.maxX, b.maxX)
				&& (a.minX != a.maxX || b.minX != b.maxX);
		boolean sideInY = Math.max(a.minY, b.minY) == Math.min(a.maxY, b.maxY)
				&& (a.minY != a.maxY || b.minY != b.maxY);
		return sideInX || sideInY;
	}

	private void compare(Arc a, int i0, int i1, Point from, Point to, Arc b, int j0, int j1, Point otherFrom, Point otherTo,
			double reach) {
		if (apart(from.x(), to.x(), otherFrom.x(), otherTo.x(), reach)
				|| apart(from.y(), to.y(), otherFrom.y(), otherTo.y(), reach)) {
			return;
		}
		if (i1 - i0 == 1 && j1 - j0 == 1) {
			set(a0, from);
			set(a1, to);
			set(b0, otherFrom);
			set(b1, otherTo);
			compareChords(a, i0, b, j0);
		} else if (i1 - i0 >= j1 - j0) {
			int middle = (i0 + i1) >>> 1;
			Point between = a.corner(middle);
			compare(a, i0, middle, from, between, b, j0, j1, otherFrom, otherTo, reach);
			compare(a, middle, i1, between, to, b, j0, j1, otherFrom, otherTo, reach);
		} else {
			int middle = (j0 + j1) >>> 1;
			Point between = b.corner(middle);
			compare(a, i0, i1, from, to, b, j0, middle, otherFrom, between, reach);
			compare(a, i0, i1, from, to, b, middle, j1, between, otherTo, reach);
		}
	}

	private static boolean apart(double a0, double a1, double b0, double b1, double reach) {
		return Math.max(a0, a1) + reach < Math.min(b0, b1) || Math.max(b0, b1) + reach < Math.min(a0, a1);
	}

	/** Of which the four ends are set. */
	private void compareChords(Arc a, int i, Arc b, int j) {
		if (snapCorners) {
			snap(a, i, a0, b, j, b0, b1);
			snap(a, i + 1, a1, b, j, b0, b1);
			snap(b, j, b0, a, i, a0, a1);
			snap(b, j + 1, b1, a, i, a0, a1);
		}
		intersector.computeIntersection(a0, a1, b0, b1);
		for (int k = 0; k < intersector.getIntersectionNum(); k++) {
			Coordinate found = intersector.getIntersection(k);
			Point place = new Point(found.x, found.y);
			double ta = parameter(a, i, place, a0, a1);
			double tb = parameter(b, j, place, b0, b1);
			if (!snapCorners && intersector.isProper()) {
				CurveCrossing exact = crossing(a, b, ta, tb, place);
				if (exact != null) {
					place = exact.place();
					ta = exact.first();
					tb = exact.second();
				}
			}
			join(a, ta, b, tb, place);
		}
	}

	private CurveCrossing crossing(Arc a, Arc b, double ta, double tb, Point place) {
		if (a.source.segment() instanceof Line && b.source.segment() instanceof Line) {
			return null;
		}
		CurveCrossing exact = CurveCrossing.near(a.source.segment(), ta, b.source.segment(), tb);
		boolean usable = exact != null && exact.place().distance(place) <= 4 * deviation + nodes.weld()
				&& exact.first() >= a.from && exact.first() <= a.to && exact.second() >= b.from
				&& exact.second() <= b.to;
		return usable ? exact : null;
	}

	private void snap(Arc arc, int corner, Coordinate place, Arc other, int chord, Coordinate from, Coordinate to) {
		double distance = org.locationtech.jts.algorithm.Distance.pointToSegment(place, from, to);
		if (distance <= nodes.weld()) {
			Point point = new Point(place.x, place.y);
			join(arc, arc.parameter(corner), other, parameter(other, chord, point, from, to), point);
		}
	}

	private void join(Arc a, double ta, Arc b, double tb, Point place) {
		Node node = endNear(a, place);
		if (node == null) {
			node = endNear(b, place);
		}
		if (node == null) {
			node = nodes.at(place);
		}
		a.meet(ta, node);
		b.meet(tb, node);
	}

	private Node endNear(Arc arc, Point place) {
		if (arc.start.point.distance(place) <= nodes.weld()) {
			return arc.start;
		}
		return arc.end.point.distance(place) <= nodes.weld() ? arc.end : null;
	}

	private static double parameter(Arc arc, int chord, Point place, Coordinate from, Coordinate to) {
		double dx = to.x - from.x;
		double dy = to.y - from.y;
		double square = dx * dx + dy * dy;
		double fraction = square == 0 ? 0 : ((place.x() - from.x) * dx + (place.y() - from.y) * dy) / square;
		double start = arc.parameter(chord);
		return start + (arc.parameter(chord + 1) - start) * Math.max(0, Math.min(1, fraction));
	}

	private static void set(Coordinate coordinate, Point point) {
		coordinate.x = point.x();
		coordinate.y = point.y();
	}
}
