package org.frisket.toolpath.track;

import org.frisket.geometry.Point;

/** A straight move. */
public record Straight(Point start, Point end) implements Move {

	@Override
	public double length() {
		return Math.hypot(end.x() - start.x(), end.y() - start.y());
	}

	@Override
	public double startHeading() {
		return Math.atan2(end.y() - start.y(), end.x() - start.x());
	}

	@Override
	public double endHeading() {
		return startHeading();
	}

	@Override
	public double curvature() {
		return 0;
	}

	@Override
	public Point at(double way) {
		double length = length();
		double t = length == 0 ? 0 : way / length;
		return t == 1 ? end : new Point(start.x() + t * (end.x() - start.x()), start.y() + t * (end.y() - start.y()));
	}

	@Override
	public Straight between(double from, double to) {
		return new Straight(at(from), at(to));
	}

	@Override
	public Straight reversed() {
		return new Straight(end, start);
	}
}
