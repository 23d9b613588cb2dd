package org.frisket.geometry;

/** Elliptical arcs, by their ends as SVG describes them (SVG 1.1, appendix F.6) or round a centre. */
final class EllipticalArc {

	private static final double QUARTER = Math.PI / 2;
	/** For a full turn; enough for any arc that fits on a sheet, however fine. */
	private static final int MOST_CUBICS = 1_000;
	/** Rounding must not cost a cubic. */
	private static final double SLACK = 1e-9;

	private final double rx;
	private final double ry;
	private final double turn;
	private final Point centre;
	private final double startAngle;
	private final double sweepAngle;

	private EllipticalArc(double rx, double ry, double turn, Point centre, double startAngle, double sweepAngle) {
		this.rx = rx;
		this.ry = ry;
		this.turn = turn;
		this.centre = centre;
		this.startAngle = startAngle;
		this.sweepAngle = sweepAngle;
	}

	/** A radius of zero makes a line. */
	static void add(OutlineBuilder builder, double rx, double ry, double turn, boolean large, boolean sweep,
			Point end, double deviation) {
		if (end.equals(builder.current())) {
			return;
		}
		EllipticalArc arc = between(builder.current(), end, Math.abs(rx), Math.abs(ry), turn, large, sweep);
		// a radius so small that it cannot be scaled up is as good as none
		if (rx == 0 || ry == 0 || !arc.centre.isFinite()) {
			builder.lineTo(end);
		} else {
			arc.addTo(builder, end, deviation);
		}
	}

	/** From the pen's place on, which has to be where the arc starts. */
	static void addAround(OutlineBuilder builder, Point centre, double rx, double ry, double turn, double from,
			double sweep, double deviation) {
		EllipticalArc arc = new EllipticalArc(rx, ry, turn, centre, from, sweep);
		arc.addTo(builder, arc.at(from + sweep), deviation);
	}

	static Point pointAround(Point centre, double rx, double ry, double turn, double angle) {
		return new EllipticalArc(rx, ry, turn, centre, angle, 0).at(angle);
	}

	/** From end points to centre, F.6.5; radii that are too small grow, F.6.6. */
	static EllipticalArc between(Point start, Point end, double radiusX, double radiusY, double turn, boolean large,
			boolean sweep) {
		Transform toAxes = Transform.rotation(-turn);
		Point half = toAxes.apply(start.minus(end).times(0.5));
		double excess = square(half.x() / radiusX) + square(half.y() / radiusY);
		double growth = Math.sqrt(Math.max(1, excess));
		double rx = radiusX * growth;
		double ry = radiusY * growth;
		// on the unit circle the centre lies on the bisector of the chord
		double squared = square(half.x() / rx) + square(half.y() / ry);
		double factor = Math.sqrt(Math.max(0, 1 / squared - 1)) * (large == sweep ? -1 : 1);
		Point offset = new Point(factor * rx * half.y() / ry, -factor * ry * half.x() / rx);
		Point centre = Transform.rotation(turn).apply(offset).plus(start.towards(end, 0.5));
		double from = Math.atan2((half.y() - offset.y()) / ry, (half.x() - offset.x()) / rx);
		double to = Math.atan2((-half.y() - offset.y()) / ry, (-half.x() - offset.x()) / rx);
		double swept = to - from;
		if (sweep && swept < 0) {
			swept += 2 * Math.PI;
		} else if (!sweep && swept > 0) {
			swept -= 2 * Math.PI;
		}
		return new EllipticalArc(rx, ry, turn, centre, from, swept);
	}

	Point centre() {
		return centre;
	}

	/** In radians, measured on the circle that the ellipse is stretched from. */
	double startAngle() {
		return startAngle;
	}

	/** Signed, in radians; positive from the x axis towards the y axis. */
	double sweepAngle() {
		return sweepAngle;
	}

	private static double square(double value) {
		return value * value;
	}

	/** By the fewest cubics of equal turn, a quarter at most, that stay within the deviation. */
	private void addTo(OutlineBuilder builder, Point end, double deviation) {
		int count = (int) Math.max(1, Math.ceil(Math.abs(sweepAngle) / QUARTER - SLACK));
		while (count < MOST_CUBICS && Math.max(rx, ry) * error(sweepAngle / count) > deviation) {
			count++;
		}
		double step = sweepAngle / count;
		double handle = 4.0 / 3 * Math.tan(step / 4);
		for (int i = 0; i < count; i++) {
			double from = startAngle + i * step;
			double to = from + step;
			Point last = i == count - 1 ? end : at(to);
			builder.cubicTo(at(from).plus(tangent(from).times(handle)), at(to).minus(tangent(to).times(handle)), last);
		}
	}

	/**
	 * What a cubic misses an arc of the unit circle by, at most: 2/27 sin⁶(a/4) / cos²(a/4). From memory; for a quarter
	 * turn it gives the 2.725e-4 that is known.
	 */
	private static double error(double angle) {
		double sine = Math.sin(angle / 4);
		double cosine = Math.cos(angle / 4);
		return 2.0 / 27 * Math.pow(sine, 6) / (cosine * cosine);
	}

	private Point at(double angle) {
		Point onAxes = new Point(rx * Math.cos(angle), ry * Math.sin(angle));
		return Transform.rotation(turn).apply(onAxes).plus(centre);
	}

	private Point tangent(double angle) {
		return Transform.rotation(turn).apply(new Point(-rx * Math.sin(angle), ry * Math.cos(angle)));
	}
}
