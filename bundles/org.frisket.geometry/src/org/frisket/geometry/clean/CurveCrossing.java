package org.frisket.geometry.clean;

import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** The place where two curves cross, and its parameter on each. */
record CurveCrossing(Point place, double first, double second) {

	private static final int STEPS = 12;
	/** Sine of the angle below which a crossing counts as a touch, where Newton's method is not to be trusted. */
	private static final double SHALLOW = 1e-5;

	/** By Newton's method from a guess; null if it does not settle. */
	static CurveCrossing near(Segment a, double guessA, Segment b, double guessB) {
		double ta = guessA;
		double tb = guessB;
		double settled = 1e-14 * (1 + Math.abs(a.start().x()) + Math.abs(a.start().y()));
		for (int step = 0; step < STEPS; step++) {
			Point onA = a.at(ta);
			Point gap = b.at(tb).minus(onA);
			if (gap.length() <= settled) {
				return new CurveCrossing(onA, ta, tb);
			}
			Point alongA = a.derivative(ta);
			Point alongB = b.derivative(tb);
			double det = alongA.cross(alongB);
			if (Math.abs(det) <= SHALLOW * alongA.length() * alongB.length()) {
				return null;
			}
			ta += gap.cross(alongB) / det;
			tb += gap.cross(alongA) / det;
			if (!(ta >= 0 && ta <= 1 && tb >= 0 && tb <= 1)) {
				return null;
			}
		}
		Point onA = a.at(ta);
		return onA.distance(b.at(tb)) <= 100 * settled ? new CurveCrossing(onA, ta, tb) : null;
	}
}
