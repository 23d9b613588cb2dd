package org.frisket.geometry;

/** A place or a displacement in the plane, in millimetres. */
public record Point(double x, double y) {

	public static final Point ORIGIN = new Point(0, 0);

	/** Squares between these neither overflow nor lose digits. */
	private static final double LEAST_SQUARE = 1e-280;
	private static final double MOST_SQUARE = 1e300;

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
		return length(x, y);
	}

	public double distance(Point other) {
		return length(x - other.x, y - other.y);
	}

	/** Many times faster than {@link Math#hypot}, which is asked only for lengths that nothing on a sheet has. */
	private static double length(double dx, double dy) {
		double square = dx * dx + dy * dy;
		return square > LEAST_SQUARE && square < MOST_SQUARE ? Math.sqrt(square) : Math.hypot(dx, dy);
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

	/**
	 * The nearest of a grid so fine, 2^30 places to a mm, that nothing but what rounding leaves of a distance is lost. Places
	 * of the grid differ from each other by numbers without an error, and none is a negative zero.
	 */
	public Point withoutNoise() {
		return new Point(withoutNoise(x), withoutNoise(y));
	}

	private static double withoutNoise(double length) {
		return Math.rint(length * 0x1p30) / 0x1p30 + 0.0;
	}
}
