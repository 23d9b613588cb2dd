package org.frisket.geometry;

/** An axis-parallel box in millimetres; {@link #EMPTY} holds no point. */
public record Bounds(double minX, double minY, double maxX, double maxY) {

	public static final Bounds EMPTY = new Bounds(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
			Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

	public static Bounds of(Point point) {
		return new Bounds(point.x(), point.y(), point.x(), point.y());
	}

	public boolean isEmpty() {
		return minX > maxX || minY > maxY;
	}

	/** 0 for an empty box. */
	public double width() {
		return isEmpty() ? 0 : maxX - minX;
	}

	/** 0 for an empty box. */
	public double height() {
		return isEmpty() ? 0 : maxY - minY;
	}

	public Point centre() {
		return new Point((minX + maxX) / 2, (minY + maxY) / 2);
	}

	public Bounds with(Point point) {
		return new Bounds(Math.min(minX, point.x()), Math.min(minY, point.y()), Math.max(maxX, point.x()),
				Math.max(maxY, point.y()));
	}

	public Bounds with(Bounds other) {
		return new Bounds(Math.min(minX, other.minX), Math.min(minY, other.minY), Math.max(maxX, other.maxX),
				Math.max(maxY, other.maxY));
	}

	/** Grown by {@code margin} on every side (shrunk if negative). */
	public Bounds grown(double margin) {
		return isEmpty() ? this : new Bounds(minX - margin, minY - margin, maxX + margin, maxY + margin);
	}

	public Bounds moved(Point by) {
		return new Bounds(minX + by.x(), minY + by.y(), maxX + by.x(), maxY + by.y());
	}

	public boolean contains(Point point) {
		return point.x() >= minX && point.x() <= maxX && point.y() >= minY && point.y() <= maxY;
	}

	public boolean intersects(Bounds other) {
		return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
	}
}
