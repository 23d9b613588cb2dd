package org.frisket.geometry.fit;

import java.util.List;

import org.frisket.geometry.Point;

/**
 * Tells apart, along dense points, the true corners and the true straight edges from the vertices and chords that only
 * stand for a curve.
 * <p>
 * A curve sampled with deviation e turns at its vertices about evenly for the length of its chords, and a chord of
 * length l between turns of angle a stands off the curve by l a / 8, which is no more than e. What turns much more
 * sharply than its neighbourhood is a corner; what stands off more was meant to be straight.
 */
final class CornerFinder {

	private static final double ALWAYS_A_CORNER = Math.PI / 3;
	private static final double SPIKE = Math.toRadians(150);
	private static final double STANDS_OUT = 2.5;
	private static final double LONG_AMONG_NEIGHBOURS = 4;

	private final double[] turns;
	private final double[] lengths;
	private final boolean[] corner;
	private final boolean[] straight;
	private final boolean closed;
	private final int count;

	/**
	 * @param points no two neighbours equal; the first is not repeated if closed
	 * @param sampling how far in mm the points' chords may stand off the curve
	 * @param angle turns below this, in radians, are no corners
	 */
	CornerFinder(List<Point> points, boolean closed, double sampling, double angle) {
		this.closed = closed;
		count = points.size();
		turns = new double[count];
		lengths = new double[count];
		corner = new boolean[count];
		straight = new boolean[count];
		for (int i = 0; i < count; i++) {
			lengths[i] = points.get(i).distance(points.get(next(i)));
		}
		for (int i = 0; i < count; i++) {
			Point before = points.get(i).minus(points.get(previous(i)));
			Point after = points.get(next(i)).minus(points.get(i));
			turns[i] = isEnd(i) ? 0 : Math.atan2(before.cross(after), before.dot(after));
		}
		for (int i = 0; i < count; i++) {
			corner[i] = isEnd(i) || isCorner(i, angle);
		}
		for (int i = 0; i < (closed ? count : count - 1); i++) {
			straight[i] = isStraight(i, sampling);
		}
	}

	boolean isClosed() {
		return closed;
	}

	boolean isCorner(int vertex) {
		return corner[vertex];
	}

	/** Whether the way nearly turns back at a vertex. */
	boolean isSpike(int vertex) {
		return Math.abs(turns[vertex]) > SPIKE;
	}

	/** Whether the edge from a vertex to the next is a straight line of its own. */
	boolean isStraight(int edge) {
		return straight[edge];
	}

	/** Whether a vertex parts the curve runs: a corner or the end of a straight edge. */
	boolean isNode(int vertex) {
		return corner[vertex] || straight[vertex] || straight[previous(vertex)];
	}

	private boolean isEnd(int vertex) {
		return !closed && (vertex == 0 || vertex == count - 1);
	}

	private int next(int i) {
		return (i + 1) % count;
	}

	private int previous(int i) {
		return (i + count - 1) % count;
	}

	private boolean isCorner(int vertex, double angle) {
		double turn = Math.abs(turns[vertex]);
		if (turn < angle) {
			return false;
		}
		double expected = Math.max(curvature(previous(vertex)), curvature(next(vertex))) * span(vertex);
		return turn >= ALWAYS_A_CORNER || turn > STANDS_OUT * expected;
	}

	private double curvature(int vertex) {
		return Math.abs(turns[vertex]) / span(vertex);
	}

	private double span(int vertex) {
		return (lengths[previous(vertex)] + lengths[vertex]) / 2;
	}

	private boolean isStraight(int edge, double sampling) {
		boolean fromCorner = corner[edge];
		boolean toCorner = corner[next(edge)];
		double turn = Math.max(fromCorner ? 0 : Math.abs(turns[edge]), toCorner ? 0 : Math.abs(turns[next(edge)]));
		double neighbour = Math.max(fromCorner ? 0 : longerOfTwo(edge, -1), toCorner ? 0 : longerOfTwo(edge, 1));
		double standsOff = lengths[edge] * turn / 8;
		return fromCorner && toCorner || standsOff > 2 * sampling
				|| standsOff > sampling / 4 && lengths[edge] > LONG_AMONG_NEIGHBOURS * neighbour;
	}

	/** Of the next two edges one way: an outset has a short edge after every long one, at the vertices of its curves. */
	private double longerOfTwo(int edge, int way) {
		return Math.max(lengths[(edge + way + count) % count], lengths[(edge + 2 * way + 2 * count) % count]);
	}
}
