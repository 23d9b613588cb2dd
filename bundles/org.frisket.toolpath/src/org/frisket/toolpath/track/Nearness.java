package org.frisket.toolpath.track;

import org.frisket.geometry.Point;

/** How far places are from a move, asked for many of them. */
interface Nearness {

	/** In mm. */
	double distance(Point p);

	/** @param move an arc of a half circle at most, or straight */
	static Nearness of(Move move) {
		return move instanceof Arc arc ? arc(arc) : straight(move.start(), move.end());
	}

	private static Nearness arc(Arc arc) {
		Point start = arc.start();
		Point end = arc.end();
		double x = arc.centre().x();
		double y = arc.centre().y();
		// a place is opposite the arc if it is no further from the middle's direction than the ends are
		double middle = arc.from() + arc.sweep() / 2;
		double middleX = Math.cos(middle);
		double middleY = Math.sin(middle);
		double least = Math.cos(arc.sweep() / 2);
		return p -> {
			double dx = p.x() - x;
			double dy = p.y() - y;
			double far = Math.hypot(dx, dy);
			return dx * middleX + dy * middleY >= least * far ? Math.abs(far - arc.radius())
					: Math.min(p.distance(start), p.distance(end));
		};
	}

	private static Nearness straight(Point start, Point end) {
		double dx = end.x() - start.x();
		double dy = end.y() - start.y();
		double l2 = dx * dx + dy * dy;
		return p -> {
			double t = l2 == 0 ? 0 : Math.max(0, Math.min(1, ((p.x() - start.x()) * dx + (p.y() - start.y()) * dy) / l2));
			return Math.hypot(p.x() - start.x() - t * dx, p.y() - start.y() - t * dy);
		};
	}
}
