package org.frisket.print.marks;

import java.util.Optional;
import java.util.function.Predicate;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;

/** The free place of a sheet that is nearest to a wished one, out of a grid from edge to edge. */
public final class FreePlace {

	/** Places that are tried along the longer side. */
	private static final int STEPS = 150;

	private FreePlace() {
	}

	/**
	 * Where something may stand; empty if there is no such place.
	 *
	 * @param extent of it, about its own origin @param area that it has to stay in @param free whether a box is
	 */
	public static Optional<Point> nearest(Point wished, Bounds extent, Bounds area, Predicate<Bounds> free) {
		double left = area.minX() - extent.minX();
		double top = area.minY() - extent.minY();
		double width = area.maxX() - extent.maxX() - left;
		double height = area.maxY() - extent.maxY() - top;
		if (!(width > 0 && height > 0)) {
			return Optional.empty();
		}
		double step = Math.max(width, height) / STEPS;
		int columns = (int) Math.max(1, Math.floor(width / step));
		int rows = (int) Math.max(1, Math.floor(height / step));
		Point best = null;
		for (int row = 0; row <= rows; row++) {
			for (int column = 0; column <= columns; column++) {
				Point at = new Point(left + width * column / columns, top + height * row / rows);
				if ((best == null || at.distance(wished) < best.distance(wished)) && free.test(extent.moved(at))) {
					best = at;
				}
			}
		}
		return Optional.ofNullable(best);
	}
}
