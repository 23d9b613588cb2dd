package org.frisket.geometry.lines;

import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** How a contour turns from one segment to the next. */
public final class Bend {

	/** Curves that were fitted or drawn by hand meet at a few degrees where a smooth line was meant. */
	private static final double LEAST_CORNER = Math.toRadians(8);

	private Bend() {
	}

	/** In radians from the x axis towards the y axis, more than -pi and up to pi. */
	public static double angle(Segment before, Segment after) {
		return angle(before.endTangent(), after.startTangent());
	}

	/** Between two directions of travel; see {@link #angle(Segment, Segment)}. */
	public static double angle(Point arriving, Point leaving) {
		return Math.atan2(arriving.cross(leaving), arriving.dot(leaving));
	}

	/** Whether two segments meet at a corner, rather than run on into each other. */
	public static boolean isCorner(Segment before, Segment after) {
		return Math.abs(angle(before, after)) >= LEAST_CORNER;
	}
}
