package org.frisket.geometry.internal.outset;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Point;

/** A curved segment of the shape, in powers of its parameter. */
final class CubicFoot implements Foot {

	/** How far from an end without a direction of its own, one is looked for. */
	private static final double NUDGE = 1e-6;

	/** Of squares of speeds, relative to that of the whole. */
	private static final double STANDSTILL = 1e-16;

	private final double x0;
	private final double x1;
	private final double x2;
	private final double x3;
	private final double y0;
	private final double y1;
	private final double y2;
	private final double y3;
	private final double slowest;

	CubicFoot(Cubic cubic) {
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
		double reach = Math.abs(x1) + Math.abs(x2) + Math.abs(x3) + Math.abs(y1) + Math.abs(y2) + Math.abs(y3);
		slowest = STANDSTILL * reach * reach;
	}

	@Override
	public void at(double t, double distance, double[] place) {
		double dx = (3 * x3 * t + 2 * x2) * t + x1;
		double dy = (3 * y3 * t + 2 * y2) * t + y1;
		double square = dx * dx + dy * dy;
		double moving = t;
		if (square <= slowest) {
			moving = t < 0.5 ? t + NUDGE : t - NUDGE;
			dx = (3 * x3 * moving + 2 * x2) * moving + x1;
			dy = (3 * y3 * moving + 2 * y2) * moving + y1;
			square = dx * dx + dy * dy;
		}
		double share = distance / Math.sqrt(square);
		double turn = dx * (6 * y3 * moving + 2 * y2) - dy * (6 * x3 * moving + 2 * x2);
		double stretching = 1 - share * turn / square;
		place[0] = ((x3 * t + x2) * t + x1) * t + x0 - share * dy;
		place[1] = ((y3 * t + y2) * t + y1) * t + y0 + share * dx;
		place[2] = stretching * dx;
		place[3] = stretching * dy;
	}

	@Override
	public double stretching(double t, double distance) {
		double dx = (3 * x3 * t + 2 * x2) * t + x1;
		double dy = (3 * y3 * t + 2 * y2) * t + y1;
		double square = dx * dx + dy * dy;
		if (square <= slowest) {
			return stretching(t < 0.5 ? t + NUDGE : t - NUDGE, distance);
		}
		double turn = dx * (6 * y3 * t + 2 * y2) - dy * (6 * x3 * t + 2 * x2);
		return 1 - distance * turn / (square * Math.sqrt(square));
	}

	@Override
	public boolean isEven() {
		return false;
	}

	/** Squared distance of a place from the foot, near the parameter of a guess and within a range. */
	double squareFrom(double x, double y, double guess, double from, double to) {
		double t = guess;
		for (int i = 0; i < 6; i++) {
			double missX = ((x3 * t + x2) * t + x1) * t + x0 - x;
			double missY = ((y3 * t + y2) * t + y1) * t + y0 - y;
			double dx = (3 * x3 * t + 2 * x2) * t + x1;
			double dy = (3 * y3 * t + 2 * y2) * t + y1;
			double speed = dx * dx + dy * dy;
			double slope = speed + missX * (6 * x3 * t + 2 * x2) + missY * (6 * y3 * t + 2 * y2);
			double step = (missX * dx + missY * dy) / (slope > 0 ? slope : speed + Double.MIN_NORMAL);
			t = Math.min(to, Math.max(from, t - step));
			if (Math.abs(step) < 1e-9) {
				break;
			}
		}
		double missX = ((x3 * t + x2) * t + x1) * t + x0 - x;
		double missY = ((y3 * t + y2) * t + y1) * t + y0 - y;
		return missX * missX + missY * missY;
	}
}
