package org.frisket.impose.shape;

import java.util.List;

import org.locationtech.jts.geom.Polygon;

/** What a part takes up, as convex pieces about an origin of its own, with its box and reach. */
public final class Solid {

	private final List<Convex> pieces;
	private final double minX;
	private final double minY;
	private final double maxX;
	private final double maxY;
	private final double reach;
	private final double area;

	private Solid(List<Convex> pieces, double area) {
		this.pieces = List.copyOf(pieces);
		this.area = area;
		double x0 = Double.POSITIVE_INFINITY;
		double y0 = Double.POSITIVE_INFINITY;
		double x1 = Double.NEGATIVE_INFINITY;
		double y1 = Double.NEGATIVE_INFINITY;
		double far = 0;
		for (Convex piece : pieces) {
			for (int i = 0; i < piece.size(); i++) {
				x0 = Math.min(x0, piece.x(i));
				y0 = Math.min(y0, piece.y(i));
				x1 = Math.max(x1, piece.x(i));
				y1 = Math.max(y1, piece.y(i));
				far = Math.max(far, Math.hypot(piece.x(i), piece.y(i)));
			}
		}
		minX = x0;
		minY = y0;
		maxX = x1;
		maxY = y1;
		reach = far;
	}

	/** @param polygons disjoint, about the origin; holes are free for other parts */
	public static Solid of(List<Polygon> polygons) {
		return new Solid(polygons.stream().flatMap(p -> Parting.of(p).stream()).toList(),
				polygons.stream().mapToDouble(Polygon::getArea).sum());
	}

	public Solid turned(double cos, double sin) {
		return new Solid(pieces.stream().map(piece -> piece.turned(cos, sin)).toList(), area);
	}

	public List<Convex> pieces() {
		return pieces;
	}

	public double area() {
		return area;
	}

	public double minX() {
		return minX;
	}

	public double minY() {
		return minY;
	}

	public double maxX() {
		return maxX;
	}

	public double maxY() {
		return maxY;
	}

	/** Of its farthest corner from the origin. */
	public double reach() {
		return reach;
	}
}
