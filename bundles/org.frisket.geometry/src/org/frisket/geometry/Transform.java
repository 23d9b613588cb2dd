package org.frisket.geometry;

/**
 * An affine map {@code (x, y) -> (a x + c y + e, b x + d y + f)}, in the order of SVG's
 * {@code matrix(a b c d e f)}.
 */
public record Transform(double a, double b, double c, double d, double e, double f) {

	public static final Transform IDENTITY = new Transform(1, 0, 0, 1, 0, 0);

	public static Transform translation(double dx, double dy) {
		return new Transform(1, 0, 0, 1, dx, dy);
	}

	public static Transform scaling(double sx, double sy) {
		return new Transform(sx, 0, 0, sy, 0, 0);
	}

	/** A turn about the origin that takes the x axis towards the y axis. */
	public static Transform rotation(double radians) {
		double cos = Math.cos(radians);
		double sin = Math.sin(radians);
		return new Transform(cos, sin, -sin, cos, 0, 0);
	}

	public Point apply(Point p) {
		return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
	}

	/** This map first, then {@code next}. */
	public Transform then(Transform next) {
		return new Transform(next.a * a + next.c * b, next.b * a + next.d * b, next.a * c + next.c * d,
				next.b * c + next.d * d, next.a * e + next.c * f + next.e, next.b * e + next.d * f + next.f);
	}

	/** Whether it only moves things. */
	public boolean isTranslation() {
		return a == 1 && b == 0 && c == 0 && d == 1;
	}

	/** Factor by which areas grow; negative if the map mirrors. */
	public double determinant() {
		return a * d - b * c;
	}

	/** @throws ArithmeticException if the map flattens the plane */
	public Transform inverse() {
		double det = determinant();
		if (det == 0 || !Double.isFinite(det)) {
			throw new ArithmeticException("transform has no inverse: determinant " + det);
		}
		return new Transform(d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det);
	}
}
