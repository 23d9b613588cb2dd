package org.frisket.toolpath.track;

import java.util.List;

import org.frisket.geometry.Point;

/**
 * Two arcs that meet with a common tangent, between two places with given directions; the control legs at both ends are of
 * the same length (Bolton, Biarc curves, Computer-Aided Design 7, 1975; from memory, formulas derived).
 */
final class Biarc {

	private static final double STRAIGHT = 1e-12;
	/** In radians: an arc that bends less has so large a radius that rounding tells. */
	private static final double FLAT = 1e-7;

	private Biarc() {
	}

	/** @param u direction at the start @param v direction at the end; both of length 1 */
	static List<Move> between(Point a, Point u, Point b, Point v) {
		double dx = b.x() - a.x();
		double dy = b.y() - a.y();
		double chord2 = dx * dx + dy * dy;
		if (chord2 == 0) {
			return List.of();
		}
		double tx = u.x() + v.x();
		double ty = u.y() + v.y();
		double along = dx * tx + dy * ty;
		// |b - a - leg (u + v)| = 2 leg
		double square = 2 * (1 - u.x() * v.x() - u.y() * v.y());
		double leg;
		if (Math.abs(square) < STRAIGHT) {
			if (Math.abs(along) < STRAIGHT) {
				return List.of(new Straight(a, b));
			}
			leg = chord2 / (2 * along);
		} else {
			leg = (-along + Math.sqrt(along * along + square * chord2)) / square;
		}
		Point middle = new Point((a.x() + b.x() + leg * (u.x() - v.x())) / 2, (a.y() + b.y() + leg * (u.y() - v.y())) / 2);
		return List.of(arc(a, u, middle, false), arc(b, v, middle, true));
	}

	/** From an end to the middle, or from the middle to the end. */
	private static Move arc(Point end, Point tangent, Point middle, boolean back) {
		double dx = middle.x() - end.x();
		double dy = middle.y() - end.y();
		double across = tangent.x() * dy - tangent.y() * dx;
		double chord2 = dx * dx + dy * dy;
		if (Math.abs(across) <= FLAT * Math.sqrt(chord2) || chord2 == 0) {
			return back ? new Straight(middle, end) : new Straight(end, middle);
		}
		// signed, on the side to which the tangent's normal points
		double radius = chord2 / (2 * across);
		Point centre = new Point(end.x() - radius * tangent.y(), end.y() + radius * tangent.x());
		double from = Math.atan2(end.y() - centre.y(), end.x() - centre.x());
		double to = Math.atan2(middle.y() - centre.y(), middle.x() - centre.x());
		// leaving an end the heading turns to the centre's side; coming back to it, it was on its way there
		boolean grows = back != radius > 0;
		double sweep = to - from;
		if (grows && sweep < 0) {
			sweep += 2 * Math.PI;
		} else if (!grows && sweep > 0) {
			sweep -= 2 * Math.PI;
		}
		Arc arc = new Arc(centre, Math.abs(radius), from, sweep);
		return back ? arc.reversed() : arc;
	}
}
