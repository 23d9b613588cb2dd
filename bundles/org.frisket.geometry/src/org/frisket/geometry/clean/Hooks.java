package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.clean.Repair.Kind;

/**
 * Takes out hooks: where a curve starts or ends straight back along its neighbour, for less than the tolerance, before
 * it turns the way it means to go. Rounding of control points makes them, and they overlap their neighbour unseen.
 */
final class Hooks {

	/** Cosine of the turn from which on a curve counts as running straight back. */
	private static final double BACK = -0.999;

	private static final int PASSES = 4;

	private final double longest;
	private final List<Repair> repairs;

	Hooks(double longest, List<Repair> repairs) {
		this.longest = longest;
		this.repairs = repairs;
	}

	/** The segments of a closed contour without hooks; the same list if there are none. */
	List<Segment> removeFrom(List<Segment> contour) {
		if (!turnsBack(contour)) {
			return contour;
		}
		List<Segment> segments = contour;
		for (int pass = 0; pass < PASSES; pass++) {
			List<Segment> straightened = pass(segments);
			if (straightened.equals(segments)) {
				return segments;
			}
			segments = straightened;
		}
		return segments;
	}

	private static boolean turnsBack(List<Segment> contour) {
		for (int i = 0; i < contour.size(); i++) {
			if (turnsBack(contour.get(i), contour.get((i + 1) % contour.size()))) {
				return true;
			}
		}
		return false;
	}

	private static boolean turnsBack(Segment ending, Segment starting) {
		return ending.endTangent().dot(starting.startTangent()) < BACK;
	}

	private List<Segment> pass(List<Segment> contour) {
		List<Segment> segments = new ArrayList<>(contour);
		for (int i = 0; i < segments.size(); i++) {
			int after = (i + 1) % segments.size();
			Segment ending = segments.get(i);
			Segment starting = segments.get(after);
			if (turnsBack(ending, starting)) {
				segments.set(i, withoutStart(ending.reversed()).reversed());
				segments.set(after, withoutStart(segments.get(after)));
			}
		}
		return segments;
	}

	private Segment withoutStart(Segment segment) {
		if (!(segment instanceof Cubic cubic)) {
			return segment;
		}
		double t = turn(cubic);
		double length = cubic.at(t).distance(cubic.start());
		if (t == 0 || length >= longest) {
			return segment;
		}
		Cubic rest = cubic.between(t, 1);
		if (rest.control1().distance(rest.start()) >= longest) {
			return segment;
		}
		repairs.add(new Repair(Kind.SHORT_SEGMENT_REMOVED, cubic.start(), length));
		// without a handle of its own the curve sets off towards the other one
		return new Cubic(cubic.start(), cubic.start(), rest.control2(), cubic.end());
	}

	/** First parameter where the curve no longer moves in the direction of its start; 0 if there is none. */
	private static double turn(Cubic cubic) {
		Point direction = cubic.startTangent();
		double a = cubic.derivative(0).dot(direction);
		double b = cubic.secondDerivative(0).dot(direction);
		double c = (cubic.secondDerivative(1).dot(direction) - b) / 2;
		// the derivative along the direction is a + b t + c t^2, with a >= 0
		double discriminant = b * b - 4 * a * c;
		if (discriminant < 0) {
			return 0;
		}
		double q = -(b + Math.copySign(Math.sqrt(discriminant), b)) / 2;
		double one = q / c;
		double other = a / q;
		double first = 1;
		for (double root : new double[] { one, other }) {
			first = root > 0 && root < first ? root : first;
		}
		return first < 1 ? first : 0;
	}
}
