package org.frisket.print.register;

import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;

/**
 * A map of the plane that keeps straight lines straight: a matrix, row by row, on {@code (x, y, 1)}, whose third result, the
 * weight, divides the other two. The weight is 0 along the line that goes to infinity, which a sheet in a picture never
 * reaches.
 */
public record Projection(double h11, double h12, double h13, double h21, double h22, double h23, double h31, double h32,
		double h33) {

	public static final Projection IDENTITY = new Projection(1, 0, 0, 0, 1, 0, 0, 0, 1);

	public static Projection of(Transform map) {
		return new Projection(map.a(), map.c(), map.e(), map.b(), map.d(), map.f(), 0, 0, 1);
	}

	public Point apply(Point p) {
		double weight = weight(p);
		return new Point((h11 * p.x() + h12 * p.y() + h13) / weight, (h21 * p.x() + h22 * p.y() + h23) / weight);
	}

	/** What the coordinates of a place are divided by. */
	public double weight(Point p) {
		return h31 * p.x() + h32 * p.y() + h33;
	}

	/** The map of small shapes round a place, as their displacements go. */
	public Transform linear(Point at) {
		double weight = weight(at);
		Point to = apply(at);
		return new Transform((h11 - to.x() * h31) / weight, (h21 - to.y() * h31) / weight, (h12 - to.x() * h32) / weight,
				(h22 - to.y() * h32) / weight, 0, 0);
	}

	/** Whether it is affine: parallel lines stay parallel. */
	public boolean isAffine() {
		return h31 == 0 && h32 == 0;
	}

	/** @throws IllegalStateException unless it {@linkplain #isAffine() is affine} */
	public Transform toTransform() {
		if (!isAffine()) {
			throw new IllegalStateException("not affine: " + this);
		}
		return new Transform(h11 / h33, h21 / h33, h12 / h33, h22 / h33, h13 / h33, h23 / h33);
	}

	public double determinant() {
		return h11 * (h22 * h33 - h23 * h32) - h12 * (h21 * h33 - h23 * h31) + h13 * (h21 * h32 - h22 * h31);
	}

	/** @throws ArithmeticException if the map flattens the plane */
	public Projection inverse() {
		double det = determinant();
		if (det == 0 || !Double.isFinite(det)) {
			throw new ArithmeticException("projection has no inverse: determinant " + det);
		}
		return new Projection((h22 * h33 - h23 * h32) / det, (h13 * h32 - h12 * h33) / det, (h12 * h23 - h13 * h22) / det,
				(h23 * h31 - h21 * h33) / det, (h11 * h33 - h13 * h31) / det, (h13 * h21 - h11 * h23) / det,
				(h21 * h32 - h22 * h31) / det, (h12 * h31 - h11 * h32) / det, (h11 * h22 - h12 * h21) / det);
	}

	/** This map first, then {@code next}. */
	public Projection then(Projection next) {
		return new Projection(//
				next.h11 * h11 + next.h12 * h21 + next.h13 * h31, next.h11 * h12 + next.h12 * h22 + next.h13 * h32,
				next.h11 * h13 + next.h12 * h23 + next.h13 * h33, //
				next.h21 * h11 + next.h22 * h21 + next.h23 * h31, next.h21 * h12 + next.h22 * h22 + next.h23 * h32,
				next.h21 * h13 + next.h22 * h23 + next.h23 * h33, //
				next.h31 * h11 + next.h32 * h21 + next.h33 * h31, next.h31 * h12 + next.h32 * h22 + next.h33 * h32,
				next.h31 * h13 + next.h32 * h23 + next.h33 * h33);
	}

	/** The same map with all numbers times a factor other than 0. */
	public Projection times(double factor) {
		return new Projection(h11 * factor, h12 * factor, h13 * factor, h21 * factor, h22 * factor, h23 * factor,
				h31 * factor, h32 * factor, h33 * factor);
	}

	/** The nine numbers, row by row. */
	public double[] rows() {
		return new double[] { h11, h12, h13, h21, h22, h23, h31, h32, h33 };
	}
}
