package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
	private final double deviation;
	private double[] x;
	private double[] y;

	Edge(Arc arc, double from, double to, Node start, Node end, double deviation) {
		this.arc = arc;
		this.start = start;
		this.end = end;
		this.winding = arc.winding;
		this.deviation = deviation;
		strands.add(new Strand(arc.source, from, to));
	}

	/** Corners of the polyline from start to end. */
	double[] x() {
		trace();
		return x;
	}

	double[] y() {
		trace();
		return y;
	}

	private void trace() {
		if (x != null) {
			return;
		}
		arc.flatten(deviation);
		Strand strand = strands.get(0);
		int first = 0;
		while (first < arc.t.length && arc.t[first] <= strand.from()) {
			first++;
		}
		int last = first;
		while (last < arc.t.length && arc.t[last] < strand.to()) {
			last++;
		}
		int inner = last - first;
		x = new double[inner + 2];
		y = new double[inner + 2];
		x[0] = start.point.x();
		y[0] = start.point.y();
		System.arraycopy(arc.x, first, x, 1, inner);
		System.arraycopy(arc.y, first, y, 1, inner);
		x[inner + 1] = end.point.x();
		y[inner + 1] = end.point.y();
		keepOneWay(x);
		keepOneWay(y);
	}

	/** A node a little off the arc must not make the polyline turn back. */
	private static void keepOneWay(double[] values) {
		double last = values[values.length - 1];
		for (int i = 1; i < values.length - 1; i++) {
			values[i] = Arc.oneWay(values[i], values[i - 1], last, last >= values[0]);
		}
	}

	/** Leaves out corners that lie too close to a bent-in end for the direction there to mean anything. */
	void trim(double reach) {
		trace();
		int kept = 1;
		for (int i = 1; i < x.length - 1; i++) {
			if (far(i, start, reach) && far(i, end, reach)) {
				x[kept] = x[i];
				y[kept++] = y[i];
			}
		}
		x[kept] = x[x.length - 1];
		y[kept++] = y[y.length - 1];
		if (kept < x.length) {
			x = Arrays.copyOf(x, kept);
			y = Arrays.copyOf(y, kept);
		}
	}

	private boolean far(int corner, Node node, double reach) {
		return Math.hypot(x[corner] - node.point.x(), y[corner] - node.point.y()) > reach;
	}

	/** Second corner seen from the start, or from the end. */
	Coordinate cornerAfter(boolean fromStart) {
		trace();
		int i = fromStart ? 1 : x.length - 2;
		return new Coordinate(x[i], y[i]);
	}

	double minY() {
		return Math.min(start.point.y(), end.point.y());
	}

	double maxY() {
		return Math.max(start.point.y(), end.point.y());
	}
}
