package org.frisket.geometry.clean;

import org.frisket.geometry.Point;

/** What lies within the box over two points. */
class Boxed {

	final double minX;
	final double minY;
	final double maxX;
	final double maxY;

	Boxed(Point one, Point other) {
		minX = Math.min(one.x(), other.x());
		maxX = Math.max(one.x(), other.x());
		minY = Math.min(one.y(), other.y());
		maxY = Math.max(one.y(), other.y());
	}

	/** Whether the boxes meet. */
	boolean isNear(Boxed other) {
		return minX <= other.maxX && other.minX <= maxX && minY <= other.maxY && other.minY <= maxY;
	}
}
