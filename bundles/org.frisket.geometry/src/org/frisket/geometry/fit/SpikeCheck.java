package org.frisket.geometry.fit;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/**
 * Whether fitting has swapped the two sides of a thin spike. They then cross so near its tip that no flattening would
 * show it, but the turn at the tip has changed its sense.
 */
final class SpikeCheck {

	private static final double SHARP = Math.toRadians(120);

	private SpikeCheck() {
	}

	/**
	 * @param polygon what the contour was fitted to
	 * @param reach how far in mm a node may have moved away from the vertices that it stands for
	 */
	static boolean sidesChangedPlaces(Contour fitted, Contour polygon, double reach) {
		List<Segment> segments = fitted.segments();
		for (int i = 0; i < segments.size(); i++) {
			double turn = turn(segments, i);
			if (Math.abs(turn) > SHARP && turn * turnNear(segments.get(i).start(), polygon, reach) <= 0) {
				return true;
			}
		}
		return false;
	}

	private static double turnNear(Point place, Contour polygon, double reach) {
		List<Segment> edges = polygon.segments();
		double sum = 0;
		for (int i = 0; i < edges.size(); i++) {
			Point vertex = edges.get(i).start();
			if (Math.abs(vertex.x() - place.x()) <= reach && vertex.distance(place) <= reach) {
				sum += turn(edges, i);
			}
		}
		return sum;
	}

	/** Turn in radians at the start of a segment. */
	private static double turn(List<Segment> segments, int index) {
		Point arriving = segments.get((index + segments.size() - 1) % segments.size()).endTangent();
		Point leaving = segments.get(index).startTangent();
		return Math.atan2(arriving.cross(leaving), arriving.dot(leaving));
	}
}
