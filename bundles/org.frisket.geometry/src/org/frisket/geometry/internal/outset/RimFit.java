package org.frisket.geometry.internal.outset;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * One cubic for a stretch of a rim. It has the rim's ends and its directions there; the lengths of its two handles are
 * found by Gauss-Newton steps on the distances from places of the rim at right angles to the cubic.
 */
final class RimFit {

	private static final int SAMPLES = 7;
	private static final int STEPS = 3;
	/** Of the tolerance: nearer than this is near enough. */
	private static final double NEAR = 0.125;
	/** A step that leaves more than this of the error is the last one. */
	private static final double LITTLE_GAIN = 0.7;

	private final double tolerance;
	private final double[] place = new double[4];
	private final double[] x = new double[SAMPLES];
	private final double[] y = new double[SAMPLES];

	private double startX;
	private double startY;
	private double endX;
	private double endY;
	/** Directions of travel, of length 1, and the lengths of the handles along them. */
	private double leaveX;
	private double leaveY;
	private double arriveX;
	private double arriveY;
	private double first;
	private double second;

	/** @param tolerance how far in mm the cubic may miss the rim */
	RimFit(double tolerance) {
		this.tolerance = tolerance;
	}

	/** Null if it would miss the rim by more than the tolerance. */
	Cubic of(Rim rim, double from, double to) {
		for (int i = 0; i < SAMPLES; i++) {
			rim.at(from + (to - from) * (i + 1) / (SAMPLES + 1), place);
			x[i] = place[0];
			y[i] = place[1];
		}
		start(rim, from, to);
		double before = Double.POSITIVE_INFINITY;
		for (int step = 0; step <= STEPS; step++) {
			Cubic cubic = cubic();
			double lastFirst = first;
			double lastSecond = second;
			double worst = improve();
			boolean settled = worst <= tolerance && (worst <= NEAR * tolerance || worst > LITTLE_GAIN * before);
			if (settled || step == STEPS) {
				boolean sound = lastFirst > 0 && lastSecond > 0 && worst <= tolerance;
				return sound && isNear(cubic, rim, from, to) ? cubic : null;
			}
			before = worst;
		}
		return null;
	}

	/** Handles as long as the rim's own speed asks for. */
	private void start(Rim rim, double from, double to) {
		double third = (to - from) / 3;
		rim.at(from, place);
		startX = place[0];
		startY = place[1];
		double speed = Math.sqrt(place[2] * place[2] + place[3] * place[3]) + Double.MIN_NORMAL;
		first = third * speed;
		leaveX = place[2] / speed;
		leaveY = place[3] / speed;
		rim.at(to, place);
		endX = place[0];
		endY = place[1];
		speed = Math.sqrt(place[2] * place[2] + place[3] * place[3]) + Double.MIN_NORMAL;
		second = third * speed;
		arriveX = place[2] / speed;
		arriveY = place[3] / speed;
	}

	private Cubic cubic() {
		return new Cubic(new Point(startX, startY), new Point(startX + first * leaveX, startY + first * leaveY),
				new Point(endX - second * arriveX, endY - second * arriveY), new Point(endX, endY));
	}

	/** Changes the handles; returns by how much the cubic missed a sample before. */
	private double improve() {
		double x1 = startX + first * leaveX;
		double y1 = startY + first * leaveY;
		double x2 = endX - second * arriveX;
		double y2 = endY - second * arriveY;
		double ff = 0;
		double fs = 0;
		double ss = 0;
		double f = 0;
		double s = 0;
		double worst = 0;
		for (int i = 0; i < SAMPLES; i++) {
			double t = (i + 1.0) / (SAMPLES + 1);
			double miss = 0;
			double normalX = 0;
			double normalY = 0;
			for (int look = 0; look < 3; look++) {
				double u = 1 - t;
				double missX = x[i] - (u * u * u * startX + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t * t * t * endX);
				double missY = y[i] - (u * u * u * startY + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t * t * t * endY);
				double dx = 3 * (u * u * (x1 - startX) + 2 * u * t * (x2 - x1) + t * t * (endX - x2));
				double dy = 3 * (u * u * (y1 - startY) + 2 * u * t * (y2 - y1) + t * t * (endY - y2));
				double square = dx * dx + dy * dy + Double.MIN_NORMAL;
				double speed = Math.sqrt(square);
				normalX = -dy / speed;
				normalY = dx / speed;
				miss = missX * normalX + missY * normalY;
				if (look < 2) {
					t = Math.max(0, Math.min(1, t + (missX * dx + missY * dy) / square));
				}
			}
			worst = Math.max(worst, Math.abs(miss));
			double u = 1 - t;
			double byFirst = 3 * u * u * t * (leaveX * normalX + leaveY * normalY);
			double bySecond = -3 * u * t * t * (arriveX * normalX + arriveY * normalY);
			ff += byFirst * byFirst;
			fs += byFirst * bySecond;
			ss += bySecond * bySecond;
			f += byFirst * miss;
			s += bySecond * miss;
		}
		double damping = 1e-9 * (ff + ss) + Double.MIN_NORMAL;
		double det = (ff + damping) * (ss + damping) - fs * fs;
		first += (f * (ss + damping) - s * fs) / det;
		second += (s * (ff + damping) - f * fs) / det;
		return worst;
	}

	/** Looks at the samples' own distances, and at the places between them. */
	private boolean isNear(Cubic cubic, Rim rim, double from, double to) {
		CubicFoot curve = new CubicFoot(cubic);
		int looks = 2 * SAMPLES + 2;
		for (int i = 1; i < looks; i++) {
			double t = (double) i / looks;
			rim.at(from + (to - from) * t, place);
			if (curve.squareFrom(place[0], place[1], t, 0, 1) > tolerance * tolerance) {
				return false;
			}
		}
		return true;
	}
}
