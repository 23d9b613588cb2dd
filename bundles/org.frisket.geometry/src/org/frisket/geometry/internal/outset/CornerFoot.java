package org.frisket.geometry.internal.outset;

import org.frisket.geometry.Point;

/** A convex corner of the shape. The parameter is the angle at which the place is seen from it, run backwards. */
final class CornerFoot implements Foot {

	private final Point corner;

	CornerFoot(Point corner) {
		this.corner = corner;
	}

	@Override
	public void at(double t, double distance, double[] place) {
		double cosine = distance * Math.cos(t);
		double sine = -distance * Math.sin(t);
		place[0] = corner.x() + cosine;
		place[1] = corner.y() + sine;
		place[2] = sine;
		place[3] = -cosine;
	}

	@Override
	public double stretching(double t, double distance) {
		return 1;
	}

	@Override
	public boolean isEven() {
		return true;
	}
}
