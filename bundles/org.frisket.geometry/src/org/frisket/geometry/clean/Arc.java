package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * A stretch of a source between two nodes that runs one way in x and one way in y. Such an arc cannot cross itself,
 * and the box over any two of its points holds all that lies between them.
 * <p>
 * A polyline stands for the arc: its corners lie on it at even steps of the parameter. They are worked out as somebody
 * asks for them, as most of a fine polyline is never looked at.
 */
final class Arc extends Boxed {

	/** So few corners are kept once they are known. */
	private static final int FEW = 48;
	private static final int MOST_CHORDS = 10_000;

	final Source source;
	final double from;
	final double to;
	final Node start;
	final Node end;
	int winding;
	/** Where other arcs meet this one between its ends; null if none do. */
	List<Meeting> meetings;
	/** 0 until it is told how fine the polyline must be. */
	private int chords;
	/** Null if the corners are not kept. */
	private Point[] corners;

	/** A node inside the arc and its parameter. */
	record Meeting(double t, Node node) {
	}

	Arc(Source source, double from, double to, Node start, Node end) {
		super(start.point, end.point);
		this.source = source;
		this.from = from;
		this.to = to;
		this.start = start;
		this.end = end;
		this.winding = source.winding();
	}

	/** Chords of the polyline, which stays within a deviation of the arc; the first deviation asked for holds. */
	int chords(double deviation) {
		if (chords == 0) {
			chords = source.segment() instanceof Cubic cubic ? chords(cubic, deviation) : 1;
			corners = chords < FEW ? new Point[chords + 1] : null;
		}
		return chords;
	}

	private int chords(Cubic cubic, double deviation) {
		double span = to - from;
		double bend = Math.max(cubic.secondDerivative(from).length(), cubic.secondDerivative(to).length()) * span * span;
		// a chord over a parameter step h stays within max |B''| h^2 / 8
		return (int) Math.min(MOST_CHORDS, Math.max(1, Math.ceil(Math.sqrt(bend / (8 * deviation)))));
	}

	/** Where a corner of the polyline lies on the source. */
	double parameter(int corner) {
		return corner == 0 ? from : corner == chords ? to : from + (to - from) * corner / chords;
	}

	/** The first corner whose parameter is greater than one between the ends of the arc. */
	int cornerAfter(double parameter) {
		int corner = (int) Math.max(1, Math.min(chords, (parameter - from) / (to - from) * chords));
		while (corner > 1 && parameter(corner - 1) > parameter) {
			corner--;
		}
		while (corner < chords && parameter(corner) <= parameter) {
			corner++;
		}
		return corner;
	}

	Point corner(int number) {
		if (number == 0) {
			return start.point;
		}
		if (number == chords) {
			return end.point;
		}
		if (corners == null) {
			return inBox(source.segment().at(parameter(number)));
		}
		if (corners[number] == null) {
			corners[number] = inBox(source.segment().at(parameter(number)));
		}
		return corners[number];
	}

	/** Rounding, or an end moved to its node, must not break the one-way run. */
	private Point inBox(Point p) {
		double x = between(p.x(), minX, maxX);
		double y = between(p.y(), minY, maxY);
		return x == p.x() && y == p.y() ? p : new Point(x, y);
	}

	private static double between(double value, double least, double most) {
		return Math.max(least, Math.min(value, most));
	}

	void meet(double parameter, Node node) {
		if (node == start || node == end) {
			return;
		}
		if (meetings == null) {
			meetings = new ArrayList<>(4);
		}
		for (Meeting known : meetings) {
			if (known.node == node) {
				return;
			}
		}
		meetings.add(new Meeting(parameter, node));
	}

	boolean touches(Node node) {
		return start == node || end == node;
	}
}
