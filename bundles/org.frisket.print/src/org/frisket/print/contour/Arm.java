package org.frisket.print.contour;

import org.frisket.geometry.Point;

/**
 * How the way goes on one side of a point, at some distance from it: prolonged up to the point, straight, or as a parabola
 * where that is clearly nearer to what is there.
 *
 * @param end       where the prolonged way comes to the point
 * @param direction of the way there, length 1, as it is travelled
 */
record Arm(Point end, Point direction) {

	/** The share of pixels next to a corner tells of both its sides. */
	static final double GAP = 1.2;
	/** In pixels; what antialiased straight edges are within. */
	private static final double STRAIGHT = 0.04;
	private static final int FEWEST_OF_A_PARABOLA = 4;

	/** @param side 1 for the way that follows, -1 for the way that leads here; null where there are too few points */
	static Arm of(Ring ring, int at, int side, double length) {
		int from = at + side;
		while (Math.abs(ring.way(at, from)) < GAP) {
			from += side;
		}
		int count = 0;
		while (count < ring.size() && Math.abs(ring.way(at, from + side * count)) <= GAP + length) {
			count++;
		}
		if (count < 3) {
			return null;
		}
		double[] t = new double[count];
		double[] x = new double[count];
		double[] y = new double[count];
		for (int i = 0; i < count; i++) {
			t[i] = ring.way(at, from + side * i);
			x[i] = ring.x(from + side * i) - ring.x(at);
			y[i] = ring.y(from + side * i) - ring.y(at);
		}
		double[] overX = line(t, x);
		double[] overY = line(t, y);
		if (count >= FEWEST_OF_A_PARABOLA && Math.max(residual(t, x, overX), residual(t, y, overY)) > STRAIGHT) {
			overX = parabola(t, x);
			overY = parabola(t, y);
		}
		return new Arm(new Point(ring.x(at) + overX[0], ring.y(at) + overY[0]), new Point(overX[1], overY[1]).unit());
	}

	private static double residual(double[] t, double[] values, double[] line) {
		double worst = 0;
		for (int i = 0; i < t.length; i++) {
			worst = Math.max(worst, Math.abs(values[i] - line[0] - line[1] * t[i]));
		}
		return worst;
	}

	/** Least squares: the value and the slope at 0. */
	private static double[] line(double[] t, double[] values) {
		double n = t.length;
		double s = 0;
		double ss = 0;
		double v = 0;
		double sv = 0;
		for (int i = 0; i < t.length; i++) {
			s += t[i];
			ss += t[i] * t[i];
			v += values[i];
			sv += t[i] * values[i];
		}
		double slope = (n * sv - s * v) / (n * ss - s * s);
		return new double[] { (v - slope * s) / n, slope };
	}

	/** Least squares about the mean of t, by polynomials that are orthogonal on the points: value and slope at 0. */
	private static double[] parabola(double[] t, double[] values) {
		double[] line = line(t, values);
		double n = t.length;
		double mean = 0;
		for (double each : t) {
			mean += each / n;
		}
		double square = 0;
		double cube = 0;
		for (double each : t) {
			double d = each - mean;
			square += d * d;
			cube += d * d * d;
		}
		double skew = cube / square;
		double dot = 0;
		double norm = 0;
		for (int i = 0; i < t.length; i++) {
			double d = t[i] - mean;
			double q = d * d - skew * d - square / n;
			dot += q * values[i];
			norm += q * q;
		}
		double bend = norm == 0 ? 0 : dot / norm;
		return new double[] { line[0] + bend * (mean * mean + skew * mean - square / n), line[1] + bend * (-2 * mean - skew) };
	}

	/** Where two sides meet when they are prolonged, if that is not beyond {@code reach}; else between their ends. */
	static Point meeting(Arm before, Arm after, double reach) {
		double sine = before.direction.cross(after.direction);
		Point middle = before.end.towards(after.end, 0.5);
		Point meeting = before.end.plus(before.direction.times(
				after.end.minus(before.end).cross(after.direction) / sine));
		return meeting.isFinite() && meeting.distance(middle) <= reach ? meeting : middle;
	}
}
