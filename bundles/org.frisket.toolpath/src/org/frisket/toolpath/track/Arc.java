package org.frisket.toolpath.track;

import org.frisket.geometry.Point;

/**
 * An arc of a circle.
 *
 * @param radius in mm, positive
 * @param from   the angle of the start about the centre
 * @param sweep  by how much that angle grows on the way; negative the other way round
 */
public record Arc(Point centre, double radius, double from, double sweep) implements Move {

	private static final double QUARTER = Math.PI / 2;

	/** @throws IllegalArgumentException for a radius that is not positive */
	public Arc {
		if (!(radius > 0)) {
			throw new IllegalArgumentException("radius " + radius);
		}
	}

	@Override
	public Point start() {
		return around(from);
	}

	@Override
	public Point end() {
		return around(from + sweep);
	}

	private Point around(double angle) {
		return new Point(centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
	}

	@Override
	public double length() {
		return radius * Math.abs(sweep);
	}

	@Override
	public double startHeading() {
		return from + Math.copySign(QUARTER, sweep);
	}

	@Override
	public double endHeading() {
		return from + sweep + Math.copySign(QUARTER, sweep);
	}

	@Override
	public double curvature() {
		return Math.copySign(1 / radius, sweep);
	}

	@Override
	public Point at(double way) {
		return around(from + way / radius * Math.signum(sweep));
	}

	@Override
	public Arc between(double wayFrom, double wayTo) {
		double sign = Math.signum(sweep);
		return new Arc(centre, radius, from + wayFrom / radius * sign, (wayTo - wayFrom) / radius * sign);
	}

	@Override
	public Arc reversed() {
		return new Arc(centre, radius, from + sweep, -sweep);
	}
}
