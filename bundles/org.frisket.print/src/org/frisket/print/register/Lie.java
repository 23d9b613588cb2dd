package org.frisket.print.register;

import org.frisket.geometry.Transform;

/**
 * What a linear map does, in numbers for people: it leans the y axis by the skew, scales both axes, and turns them.
 *
 * @param scaleX   how much longer things along x become
 * @param scaleY   how much longer things along y become, along the leaning axis
 * @param rotation of the x axis, in radians towards the y axis
 * @param skew     by how much the y axis leans towards the x axis, in radians; 0 if the axes stay square
 * @param mirrored whether the y axis lies on the other side of the x axis
 */
public record Lie(double scaleX, double scaleY, double rotation, double skew, boolean mirrored) {

	static Lie of(Transform linear) {
		double along = Math.hypot(linear.a(), linear.b());
		double across = Math.hypot(linear.c(), linear.d());
		double dot = linear.a() * linear.c() + linear.b() * linear.d();
		double det = linear.determinant();
		return new Lie(along, across, Math.atan2(linear.b(), linear.a()), Math.atan2(dot, Math.abs(det)), det < 0);
	}

	/** How much areas grow, as the scale of a square. */
	public double scale() {
		return Math.sqrt(scaleX * scaleY * Math.cos(skew));
	}
}
