package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * A stretch of a source between two nodes that runs one way in x and one way in y. Such an arc cannot cross itself,
 * and the box over any two of its points holds all that lies between them.
 */
final class Arc {

	final Source source;
	final double from;
	final double to;
	final Node start;
	final Node end;
	final double minX;
	final double minY;
	final double maxX;
	final double maxY;
	int winding;
	/** Corners of the polyline that stands for the arc, and their parameters; null until needed. */
	double[] x;
	double[] y;
	double[] t;
	/** Where other arcs meet this one between its ends; null if none do. */
	List<Meeting> meetings;

	/** A node inside the arc and its parameter. */
	record Meeting(double t, Node node) {
	}

	Arc(Source source, double from, double to, Node start, Node end) {
		this.source = source;
		this.from = from;
		this.to = to;
		this.start = start;
		this.end = end;
		this.winding = source.winding();
		Point p = start.point;
		Point q = end.point;
		minX = Math.min(p.x(), q.x());
		maxX = Math.max(p.x(), q.x());
		minY = Math.min(p.y(), q.y());
		maxY = Math.max(p.y(), q.y());
	}

	void flatten(double deviation) {
		if (x != null) {
			return;
		}
		int chords = chords(deviation);
		x = new double[chords + 1];
		y = new double[chords + 1];
		t = new double[chords + 1];
		x[0] = start.point.x();
		y[0] = start.point.y();
		t[0] = from;
		boolean rightwards = end.point.x() >= x[0];
		boolean upwards = end.point.y() >= y[0];
		for (int i = 1; i < chords; i++) {
			t[i] = from + (to - from) * i / chords;
			Point p = source.segment().at(t[i]);
			// rounding, or an end moved to its node, must not break the one-way run
			x[i] = oneWay(p.x(), x[i - 1], end.point.x(), rightwards);
			y[i] = oneWay(p.y(), y[i - 1], end.point.y(), upwards);
		}
		x[chords] = end.point.x();
		y[chords] = end.point.y();
		t[chords] = to;
	}

	static double oneWay(double value, double before, double last, boolean rising) {
		return rising ? Math.max(before, Math.min(value, last)) : Math.min(before, Math.max(value, last));
	}

	private int chords(double deviation) {
		if (!(source.segment() instanceof Cubic cubic)) {
			return 1;
		}
		double span = to - from;
		double bend = Math.max(cubic.secondDerivative(from).length(), cubic.secondDerivative(to).length()) * span * span;
		// a chord over a parameter step h stays within max |B''| h^2 / 8
		return (int) Math.min(10_000, Math.max(1, Math.ceil(Math.sqrt(bend / (8 * deviation)))));
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
