package org.frisket.geometry;

import java.util.function.DoubleConsumer;

/** A straight segment. */
public record Line(Point start, Point end) implements Segment {

	@Override
	public Point at(double t) {
		return t == 1 ? end : start.towards(end, t);
	}

	@Override
	public Point derivative(double t) {
		return end.minus(start);
	}

	@Override
	public Point startTangent() {
		return end.minus(start).unit();
	}

	@Override
	public Point endTangent() {
		return startTangent();
	}

	@Override
	public Line reversed() {
		return new Line(end, start);
	}

	@Override
	public Line between(double from, double to) {
		return new Line(at(from), at(to));
	}

	@Override
	public Line withEnds(Point newStart, Point newEnd) {
		return new Line(newStart, newEnd);
	}

	@Override
	public Line transformed(Transform transform) {
		return new Line(transform.apply(start), transform.apply(end));
	}

	@Override
	public Bounds bounds() {
		return Bounds.of(start).with(end);
	}

	@Override
	public double length() {
		return start.distance(end);
	}

	@Override
	public double areaTerm() {
		return start.cross(end) / 2;
	}

	@Override
	public void flatten(double deviation, DoubleConsumer parameters) {
		parameters.accept(1);
	}
}
