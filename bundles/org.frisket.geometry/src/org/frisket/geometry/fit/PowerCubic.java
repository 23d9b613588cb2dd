package org.frisket.geometry.fit;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/**
 * A cubic in powers of its parameter, for the inner loops of fitting: no object is made to look at a point of it.
 */
final class PowerCubic {

	private static final double SETTLED = 1e-5;

	private double x0;
	private double x1;
	private double x2;
	private double x3;
	private double y0;
	private double y1;
	private double y2;
	private double y3;

	void set(Cubic cubic) {
		Point p = cubic.start();
		Point q = cubic.control1();
		Point r = cubic.control2();
		Point s = cubic.end();
		x0 = p.x();
		x1 = 3 * (q.x() - p.x());
		x2 = 3 * (p.x() - 2 * q.x() + r.x());
		x3 = s.x() - p.x() + 3 * (q.x() - r.x());
		y0 = p.y();
		y1 = 3 * (q.y() - p.y());
		y2 = 3 * (p.y() - 2 * q.y() + r.y());
		y3 = s.y() - p.y() + 3 * (q.y() - r.y());
	}

	double x(double t) {
		return ((x3 * t + x2) * t + x1) * t + x0;
	}

	double y(double t) {
		return ((y3 * t + y2) * t + y1) * t + y0;
	}

	double dx(double t) {
		return (3 * x3 * t + 2 * x2) * t + x1;
	}

	double dy(double t) {
		return (3 * y3 * t + 2 * y2) * t + y1;
	}

	/** Parameter nearer to the foot of (x, y) on the curve than {@code guess}, by up to so many of Newton's steps. */
	double project(double x, double y, double guess, int steps) {
		double t = guess;
		for (int i = 0; i < steps; i++) {
			double missX = x(t) - x;
			double missY = y(t) - y;
			double speedX = dx(t);
			double speedY = dy(t);
			double speed = speedX * speedX + speedY * speedY;
			double slope = speed + missX * (6 * x3 * t + 2 * x2) + missY * (6 * y3 * t + 2 * y2);
			// beyond the centre of curvature Newton would walk away
			double step = (missX * speedX + missY * speedY) / (slope > 0 ? slope : speed + Double.MIN_NORMAL);
			t = Math.min(1, Math.max(0, t - step));
			if (Math.abs(step) < SETTLED) {
				break;
			}
		}
		return t;
	}

	double distance(double x, double y, double t) {
		double missX = x(t) - x;
		double missY = y(t) - y;
		return Math.sqrt(missX * missX + missY * missY);
	}
}
