package org.frisket.geometry;

import java.util.function.DoubleConsumer;

/** A cubic Bézier segment. */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Segment {

	private static final double[] GAUSS_NODES = { 0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
			0.9602898564975363 };
	private static final double[] GAUSS_WEIGHTS = { 0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
			0.1012285362903763 };

	/** The exact cubic of a quadratic with one control point. */
	public static Cubic ofQuadratic(Point start, Point control, Point end) {
		return new Cubic(start, start.towards(control, 2.0 / 3), end.towards(control, 2.0 / 3), end);
	}

	@Override
	public Point at(double t) {
		if (t == 0) {
			return start;
		}
		if (t == 1) {
			return end;
		}
		double s = 1 - t;
		double w0 = s * s * s;
		double w1 = 3 * s * s * t;
		double w2 = 3 * s * t * t;
		double w3 = t * t * t;
		return new Point(w0 * start.x() + w1 * control1.x() + w2 * control2.x() + w3 * end.x(),
				w0 * start.y() + w1 * control1.y() + w2 * control2.y() + w3 * end.y());
	}

	@Override
	public Point derivative(double t) {
		double s = 1 - t;
		double w0 = 3 * s * s;
		double w1 = 6 * s * t;
		double w2 = 3 * t * t;
		return new Point(
				w0 * (control1.x() - start.x()) + w1 * (control2.x() - control1.x()) + w2 * (end.x() - control2.x()),
				w0 * (control1.y() - start.y()) + w1 * (control2.y() - control1.y()) + w2 * (end.y() - control2.y()));
	}

	/** Second derivative by the parameter. */
	public Point secondDerivative(double t) {
		Point first = start.minus(control1.times(2)).plus(control2);
		Point last = control1.minus(control2.times(2)).plus(end);
		return first.towards(last, t).times(6);
	}

	@Override
	public Point startTangent() {
		return firstDifference(start, control1, control2, end);
	}

	@Override
	public Point endTangent() {
		return firstDifference(end, control2, control1, start).times(-1);
	}

	private static Point firstDifference(Point from, Point first, Point second, Point third) {
		Point target = !first.equals(from) ? first : !second.equals(from) ? second : third;
		return target.equals(from) ? Point.ORIGIN : target.minus(from).unit();
	}

	@Override
	public Cubic reversed() {
		return new Cubic(end, control2, control1, start);
	}

	@Override
	public Cubic between(double from, double to) {
		if (from == 0 && to == 1) {
			return this;
		}
		Point p0 = at(from);
		Point p3 = at(to);
		double third = (to - from) / 3;
		return new Cubic(p0, p0.plus(derivative(from).times(third)), p3.minus(derivative(to).times(third)), p3);
	}

	@Override
	public Cubic withEnds(Point newStart, Point newEnd) {
		return new Cubic(newStart, control1.plus(newStart.minus(start)), control2.plus(newEnd.minus(end)), newEnd);
	}

	@Override
	public Cubic transformed(Transform transform) {
		return new Cubic(transform.apply(start), transform.apply(control1), transform.apply(control2),
				transform.apply(end));
	}

	@Override
	public Bounds bounds() {
		Bounds bounds = Bounds.of(start).with(end);
		for (double t : extremes()) {
			bounds = bounds.with(at(t));
		}
		return bounds;
	}

	private double[] extremes() {
		double[] x = roots(start.x(), control1.x(), control2.x(), end.x());
		double[] y = roots(start.y(), control1.y(), control2.y(), end.y());
		double[] both = java.util.Arrays.copyOf(x, x.length + y.length);
		System.arraycopy(y, 0, both, x.length, y.length);
		return both;
	}

	/** Parameters inside (0, 1) where one coordinate of the derivative vanishes. */
	private static double[] roots(double p0, double p1, double p2, double p3) {
		double a = p3 - 3 * p2 + 3 * p1 - p0;
		double b = 2 * (p2 - 2 * p1 + p0);
		double c = p1 - p0;
		double[] found = new double[2];
		int count = 0;
		double discriminant = b * b - 4 * a * c;
		if (discriminant >= 0) {
			// the stable form of the quadratic formula; a = 0 is handled by the second quotient
			double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
			for (double t : new double[] { q / a, c / q }) {
				if (t > 0 && t < 1) {
					found[count++] = t;
				}
			}
		}
		return java.util.Arrays.copyOf(found, count);
	}

	@Override
	public double length() {
		return length(0, 1, gauss(0, 1), 0);
	}

	private double length(double from, double to, double whole, int depth) {
		double middle = (from + to) / 2;
		double left = gauss(from, middle);
		double right = gauss(middle, to);
		if (depth >= 16 || Math.abs(left + right - whole) <= 1e-11 * (left + right)) {
			return left + right;
		}
		return length(from, middle, left, depth + 1) + length(middle, to, right, depth + 1);
	}

	private double gauss(double from, double to) {
		double half = (to - from) / 2;
		double middle = (to + from) / 2;
		double sum = 0;
		for (int i = 0; i < GAUSS_NODES.length; i++) {
			double offset = half * GAUSS_NODES[i];
			sum += GAUSS_WEIGHTS[i] * (derivative(middle - offset).length() + derivative(middle + offset).length());
		}
		return sum * half;
	}

	@Override
	public double areaTerm() {
		return (6 * start.cross(control1) + 3 * start.cross(control2) + start.cross(end) + 3 * control1.cross(control2)
				+ 3 * control1.cross(end) + 6 * control2.cross(end)) / 20;
	}

	/** Steps even in the parameter, their number by Wang's bound on the second difference. */
	@Override
	public void flatten(double deviation, DoubleConsumer parameters) {
		int steps = chords(deviation);
		for (int i = 1; i < steps; i++) {
			parameters.accept((double) i / steps);
		}
		parameters.accept(1);
	}

	private int chords(double deviation) {
		double bend = Math.max(start.minus(control1.times(2)).plus(control2).length(),
				control1.minus(control2.times(2)).plus(end).length());
		// Wang's bound for degree 3: n = sqrt(3 * 2 / 8 * bend / deviation)
		return (int) Math.min(10_000, Math.max(1, Math.ceil(Math.sqrt(0.75 * bend / deviation))));
	}
}
