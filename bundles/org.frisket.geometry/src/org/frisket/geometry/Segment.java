package org.frisket.geometry;

import java.util.function.DoubleConsumer;

/** One directed piece of a contour, parametrised from 0 (start) to 1 (end). */
public sealed interface Segment permits Line, Cubic {

	Point start();

	Point end();

	/** The point at parameter {@code t}; exact at 0 and 1. */
	Point at(double t);

	/** First derivative by the parameter, in mm per unit of {@code t}. */
	Point derivative(double t);

	/**
	 * Direction of travel at the start, length 1; where control points coincide the next one that differs
	 * decides. Zero only for a segment without extent.
	 */
	Point startTangent();

	/** Direction of travel at the end, length 1; see {@link #startTangent()}. */
	Point endTangent();

	Segment reversed();

	/** The stretch between two parameters, {@code from < to}; end points are {@code at(from)}, {@code at(to)}. */
	Segment between(double from, double to);

	/** The same shape between other end points: only the ends are replaced, which is for closing rounding gaps. */
	Segment withEnds(Point start, Point end);

	Segment transformed(Transform transform);

	/** Tight bounds of the curve itself, not of its control points. */
	Bounds bounds();

	/** Arc length in mm, relative error below 1e-9. */
	double length();

	/**
	 * This segment's share of the signed area of a closed contour, one half of the integral of x dy - y dx
	 * (Green's theorem). Exact.
	 */
	double areaTerm();

	/**
	 * Hands out parameters {@code 0 < t_1 < ... <= 1} such that the chords between the points at 0, t_1, ..., 1
	 * stay within {@code deviation} of the curve. The last one is exactly 1.
	 */
	void flatten(double deviation, DoubleConsumer parameters);
}
