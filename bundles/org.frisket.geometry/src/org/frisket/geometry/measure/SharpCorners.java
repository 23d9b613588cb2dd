package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;

/** The corners of contours, by their angle. */
public final class SharpCorners {

	/** In degrees: what turns by less is smooth, and only rounding makes it a corner. */
	private static final double STRAIGHT = 1;
	private static final double HALF_TURN = 180;

	/**
	 * @param angle of the material, which lies to the left of a region's contours to the viewer; in degrees, from 0 to 360
	 */
	public record Corner(Point place, double angle) {
	}

	private SharpCorners() {
	}

	/** The corner of the material with the least angle; empty if none is below 180 degrees. */
	public static Optional<Corner> sharpest(List<Contour> contours) {
		Corner sharpest = null;
		for (Contour contour : contours) {
			for (Corner corner : corners(contour, 0)) {
				if (corner.angle() < HALF_TURN && (sharpest == null || corner.angle() < sharpest.angle())) {
					sharpest = corner;
				}
			}
		}
		return Optional.ofNullable(sharpest);
	}

	/** The corners of the material below an angle in degrees whose sides are both as long as {@code side} in mm. */
	public static List<Corner> below(Contour contour, double angle, double side) {
		return corners(contour, side).stream().filter(corner -> corner.angle() < angle).toList();
	}

	private static List<Corner> corners(Contour contour, double side) {
		List<Corner> corners = new ArrayList<>();
		List<Segment> segments = contour.segments();
		for (int i = contour.isClosed() ? 0 : 1; i < segments.size(); i++) {
			int before = Math.floorMod(i - 1, segments.size());
			Point in = segments.get(before).endTangent();
			Point out = segments.get(i).startTangent();
			double turn = Math.toDegrees(Math.atan2(in.cross(out), in.dot(out)));
			if (Math.abs(turn) > STRAIGHT && (side <= 0
					|| isLong(segments, i, 1, side) && isLong(segments, before, -1, side))) {
				corners.add(new Corner(segments.get(i).start(), HALF_TURN + turn));
			}
		}
		return corners;
	}

	/** A side goes on over nodes at which it does not turn much. */
	private static boolean isLong(List<Segment> segments, int from, int step, double side) {
		double length = 0;
		for (int k = 0; k < segments.size(); k++) {
			Segment segment = segments.get(Math.floorMod(from + step * k, segments.size()));
			length += segment.start().distance(segment.end());
			if (length >= side) {
				return true;
			}
			Segment next = segments.get(Math.floorMod(from + step * (k + 1), segments.size()));
			Point in = step > 0 ? segment.endTangent() : next.endTangent();
			Point out = step > 0 ? next.startTangent() : segment.startTangent();
			if (Math.abs(Math.atan2(in.cross(out), in.dot(out))) > Math.PI / 4) {
				return false;
			}
		}
		return false;
	}
}
