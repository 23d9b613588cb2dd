package org.frisket.print.contour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Point;

/**
 * Finds where a ring of points turns at once. The ways on both sides of a point are prolonged up to it: along a curve they
 * then agree however much it bends, at a corner they do not. The corner lies where they meet; the points near it, which
 * antialiasing has cut across it, do not count.
 */
final class CornerSearch {

	/** Turns below this are no corners: common practice, no source. */
	static final double LEAST_TURN = Math.toRadians(28);

	private static final double ARM = 6;
	private static final double SHARE_OF_RING = 0.1;
	private static final double SHORTEST_ARM = 2.5;
	/** A quick look first: half of the least turn within so many points. */
	private static final int LOOK = 3;
	private static final double APART = 3;
	/** How far the tip of a corner may lie from the points that are left of it, in pixels. */
	private static final double REACH = 2.5;

	/**
	 * @param index of the point that is nearest to it
	 * @param turn  in radians
	 */
	record Corner(int index, Point place, double turn) {
	}

	private CornerSearch() {
	}

	/** In the order of the ring. */
	static List<Corner> of(Ring ring) {
		double arm = Math.max(SHORTEST_ARM, Math.min(ARM, SHARE_OF_RING * ring.length()));
		List<Corner> found = new ArrayList<>();
		if (ring.size() < 2 * LOOK + 2 || ring.length() < 2 * (arm + Arm.GAP)) {
			return found;
		}
		for (int i = 0; i < ring.size(); i++) {
			Point before = ring.point(i).minus(ring.point(i - LOOK));
			Point after = ring.point(i + LOOK).minus(ring.point(i));
			if (Math.abs(Math.atan2(before.cross(after), before.dot(after))) >= LEAST_TURN / 2) {
				Corner corner = at(ring, i, arm, arm);
				if (corner != null) {
					found.add(corner);
				}
			}
		}
		return strongest(ring, arm, found);
	}

	/** The corner at a point, by arms of some lengths; null if there is none. */
	private static Corner at(Ring ring, int index, double lengthBefore, double lengthAfter) {
		Arm before = Arm.of(ring, index, -1, lengthBefore);
		Arm after = Arm.of(ring, index, 1, lengthAfter);
		if (before == null || after == null) {
			return null;
		}
		double turn = Math.abs(Math.atan2(before.direction().cross(after.direction()),
				before.direction().dot(after.direction())));
		Point place = Arm.meeting(before, after, REACH);
		return turn >= LEAST_TURN && place.distance(ring.point(index)) <= REACH ? new Corner(index, place, turn) : null;
	}

	/** Arms that reach past a corner see it too: what is left of others once their arms end before it is looked at again. */
	private static List<Corner> strongest(Ring ring, double arm, List<Corner> found) {
		List<Corner> sorted = new ArrayList<>(found);
		sorted.sort(Comparator.comparingDouble((Corner c) -> c.place().distance(ring.point(c.index())) - c.turn())
				.thenComparingInt(Corner::index));
		List<Corner> kept = new ArrayList<>();
		for (Corner corner : sorted) {
			double before = Double.POSITIVE_INFINITY;
			double after = Double.POSITIVE_INFINITY;
			for (Corner other : kept) {
				double way = ring.way(corner.index(), other.index());
				after = Math.min(after, way > 0 ? way : way + ring.length());
				before = Math.min(before, way < 0 ? -way : ring.length() - way);
			}
			if (Math.min(before, after) < APART) {
				continue;
			}
			Corner own = at(ring, corner.index(), Math.min(arm, before - 2 * Arm.GAP), Math.min(arm, after - 2 * Arm.GAP));
			if (own != null) {
				kept.add(own);
			}
		}
		kept.sort(Comparator.comparingInt(Corner::index));
		return kept;
	}
}
