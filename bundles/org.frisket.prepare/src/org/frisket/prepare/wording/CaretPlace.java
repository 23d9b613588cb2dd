package org.frisket.prepare.wording;

import org.frisket.geometry.Point;

/**
 * Where a caret stands in a wording, in the wording's own frame.
 *
 * @param foot on the baseline, in mm
 * @param up   away from the baseline there, of length 1; straight up where lines are straight
 */
public record CaretPlace(Point foot, Point up) {

	private static final Point STRAIGHT_UP = new Point(0, -1);

	/** In front of the first letter of a wording of which nothing else is known. */
	public static final CaretPlace FIRST = straight(Point.ORIGIN);

	/** On a line that is not bent. */
	public static CaretPlace straight(Point foot) {
		return new CaretPlace(foot, STRAIGHT_UP);
	}

	/** @param mm above the baseline; below it if negative */
	public Point above(double mm) {
		return foot.plus(up.times(mm));
	}

	/** A point of the wording's frame as it is seen from here: mm to the right of the foot, and mm below it. */
	public Point seen(Point point) {
		Point from = point.minus(foot);
		return new Point(from.x() * -up.y() + from.y() * up.x(), -from.dot(up));
	}

	public boolean isStraight() {
		return up.equals(STRAIGHT_UP);
	}
}
