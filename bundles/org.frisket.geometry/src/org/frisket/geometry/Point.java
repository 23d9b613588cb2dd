package org.frisket.geometry;

/** A place or a displacement in the plane, in millimetres. */
public record Point(double x, double y) {

	public static final Point ORIGIN = new Point(0, 0);

	public Point plus(Point other) {
		return new Point(x + other.x, y + other.y);
	}

	public Point minus(Point other) {
		return new Point(x - other.x, y - other.y);
	}

	public Point times(double factor) {
		return new Point(x * factor, y * factor);
	}

	public double dot(Point other) {
		return x * other.x + y * other.y;
	}

	/** The z component of the cross product. */
	public double cross(Point other) {
		return x * other.y - y * other.x;
	}

	/** Distance from the origin. */
	public double length() {
		return Math.hypot(x, y);
	}

	public double distance(Point other) {
		return Math.hypot(x - other.x, y - other.y);
	}

	/** The point at {@code t} on the way to {@code other}: this at 0, the other at 1. */
	public Point towards(Point other, double t) {
		return new Point(x + (other.x - x) * t, y + (other.y - y) * t);
	}

	/** Turned by a quarter from the x axis towards the y axis. */
	public Point quarterTurn() {
		return new Point(-y, x);
	}

	/** Same direction, length 1; the zero vector stays zero. */
	public Point unit() {
		double length = length();
		return length == 0 ? ORIGIN : new Point(x / length, y / length);
	}

	public boolean isFinite() {
		return Double.isFinite(x) && Double.isFinite(y);
	}
}
