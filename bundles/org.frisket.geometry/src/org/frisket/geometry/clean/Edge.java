package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Point;
import org.locationtech.jts.geom.Coordinate;

/** An arc, or the part of one between two meetings: it has nodes at its ends only. */
final class Edge {

	final Node start;
	final Node end;
	/** All sources that run here, in the direction from start to end; the first one gives the shape. */
	final List<Strand> strands = new ArrayList<>(1);
	/** From the right to the left hand of the direction from start to end (y up). */
	int winding;

	private final Arc arc;
	/** Of the corners of the arc, the first one inside the edge, and the first one beyond it. */
	private int first;
	private int last;

	Edge(Arc arc, double from, double to, Node start, Node end, double deviation) {
		this.arc = arc;
		this.start = start;
		this.end = end;
		this.winding = arc.winding;
		strands.add(new Strand(arc.source, from, to));
		int chords = arc.chords(deviation);
		first = from == arc.from ? 1 : arc.cornerAfter(from);
		last = to == arc.to ? chords : arc.cornerAfter(to);
		while (last > first && arc.parameter(last - 1) >= to) {
			last--;
		}
		last = Math.max(first, last);
	}

	/** Number of corners of the polyline from start to end. */
	int corners() {
		return last - first + 2;
	}

	Point corner(int number) {
		if (number == 0) {
			return start.point;
		}
		return number == corners() - 1 ? end.point : inner(first + number - 1);
	}

	/** A node a little off the arc must not make the polyline turn back. */
	private Point inner(int number) {
		Point p = arc.corner(number);
		return new Point(between(p.x(), start.point.x(), end.point.x()), between(p.y(), start.point.y(), end.point.y()));
	}

	private static double between(double value, double one, double other) {
		return one <= other ? Math.max(one, Math.min(value, other)) : Math.max(other, Math.min(value, one));
	}

	/** Leaves out corners that lie too close to a bent-in end for the direction there to mean anything. */
	void trim(double reach) {
		while (first < last && !far(inner(first), reach)) {
			first++;
		}
		while (first < last && !far(inner(last - 1), reach)) {
			last--;
		}
	}

	private boolean far(Point corner, double reach) {
		return corner.distance(start.point) > reach && corner.distance(end.point) > reach;
	}

	/** Second corner seen from the start, or from the end. */
	Coordinate cornerAfter(boolean fromStart) {
		Point corner = corner(fromStart ? 1 : corners() - 2);
		return new Coordinate(corner.x(), corner.y());
	}

	double minY() {
		return Math.min(start.point.y(), end.point.y());
	}

	double maxY() {
		return Math.max(start.point.y(), end.point.y());
	}
}
