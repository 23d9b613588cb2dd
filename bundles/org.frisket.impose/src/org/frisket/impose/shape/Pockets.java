package org.frisket.impose.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiPredicate;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;

/**
 * Fills the pockets of an outline whose mouths are narrow. Noise is full of them, and an offset that is wider than a mouth
 * hardly reaches in: with a mouth w and an offset d it grows by √(d² + w²/4) - d at most. What is filled covers all that
 * the outline covers.
 */
final class Pockets {

	/** How many corners ahead the other side of a mouth is looked for. */
	private static final int AHEAD = 400;
	/** Mouths may lie over mouths: so often is looked again while that leaves this share of the corners or less. */
	private static final int MOST_ROUNDS = 4;
	private static final double WORTHWHILE = 0.8;
	private static final int TRIANGLE = 3;

	private final double mouth;
	private final BiPredicate<Double, Double> useful;
	private final List<Polygon> pockets = new ArrayList<>();

	private Pockets(double mouth, BiPredicate<Double, Double> useful) {
		this.mouth = mouth;
		this.useful = useful;
	}

	/** The widest mouth by which an offset grows no more. @param growth in mm, as the offset is */
	static double mouth(double offset, double growth) {
		return 2 * Math.sqrt(growth * (2 * offset + growth));
	}

	/** @param useful whether something may fit into a pocket so wide and high: those are left open */
	static Geometry filled(Geometry polygonal, double mouth, BiPredicate<Double, Double> useful) {
		Geometry filled = polygonal;
		for (int round = 0; round < MOST_ROUNDS; round++) {
			int before = filled.getNumPoints();
			filled = new Pockets(mouth, useful).in(filled);
			if (filled.getNumPoints() > WORTHWHILE * before) {
				break;
			}
		}
		return filled;
	}

	private Geometry in(Geometry polygonal) {
		Polygon[] pieces = new Polygon[polygonal.getNumGeometries()];
		for (int i = 0; i < pieces.length; i++) {
			Polygon piece = (Polygon) polygonal.getGeometryN(i);
			LinearRing shell = in(piece.getExteriorRing(), true);
			List<LinearRing> holes = new ArrayList<>();
			for (int k = 0; k < piece.getNumInteriorRing(); k++) {
				holes.add(in(piece.getInteriorRingN(k), false));
			}
			holes.removeIf(LinearRing::isEmpty);
			pieces[i] = piece.getFactory().createPolygon(shell, holes.toArray(LinearRing[]::new));
		}
		if (pockets.isEmpty()) {
			return polygonal;
		}
		Geometry filled = pieces.length == 1 ? pieces[0] : polygonal.getFactory().createMultiPolygon(pieces);
		// seldom: another stretch of the outline lies in a pocket
		return filled.isValid() ? filled
				: OverlayNGRobust.overlay(polygonal, CascadedPolygonUnion.union(pockets), OverlayNG.UNION);
	}

	/** Walks round with the solid on the left. @return empty if nothing is left of a hole */
	private LinearRing in(LinearRing ring, boolean shell) {
		Coordinate[] c = (Orientation.isCCW(ring.getCoordinateSequence()) == shell ? ring : ring.reverse()).getCoordinates();
		List<Coordinate> kept = new ArrayList<>();
		for (int from = 0; from < c.length - 1;) {
			kept.add(c[from]);
			int to = otherSide(c, from);
			if (to > from + 1) {
				Coordinate[] pocket = Arrays.copyOfRange(c, from, to + 2);
				pocket[to - from + 1] = c[from];
				pockets.add(ring.getFactory().createPolygon(pocket));
			}
			from = to;
		}
		if (kept.size() < TRIANGLE) {
			return ring.getFactory().createLinearRing();
		}
		kept.add(kept.get(0));
		return ring.getFactory().createLinearRing(kept.toArray(Coordinate[]::new));
	}

	/** The last corner within the mouth's width to which the straight way passes all corners between on their right. */
	private int otherSide(Coordinate[] c, int from) {
		// no further than to the ring's start: one pocket over it may stay
		int end = Math.min(c.length - 1, from + AHEAD);
		int[] sides = new int[end - from];
		int count = 0;
		Coordinate right = c[from + 1];
		for (int to = from + 2; to <= end; to++) {
			if (Orientation.index(c[from], right, c[to]) == Orientation.CLOCKWISE) {
				right = c[to];
				if (c[from].distance(right) <= mouth) {
					sides[count++] = to;
				}
			}
		}
		while (count > 0) {
			int to = sides[--count];
			if (passes(c, from, to) && !isUseful(c, from, to)) {
				return to;
			}
		}
		return from + 1;
	}

	private boolean isUseful(Coordinate[] c, int from, int to) {
		Envelope box = new Envelope();
		for (int k = from; k <= to; k++) {
			box.expandToInclude(c[k]);
		}
		return useful.test(box.getWidth(), box.getHeight());
	}

	private static boolean passes(Coordinate[] c, int from, int to) {
		for (int k = from + 1; k < to; k++) {
			if (Orientation.index(c[from], c[to], c[k]) != Orientation.COUNTERCLOCKWISE) {
				return false;
			}
		}
		return true;
	}
}
