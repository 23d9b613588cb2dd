package org.frisket.impose.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/** The room a part needs: its region and half the gap around it, with few corners, never less than that. */
public final class Clearance {

	/** Of a part's size: how much more room than needed fewer corners may cost. */
	private static final double COARSE = 0.004;
	/** In mm, and of the gap: so much at most. */
	private static final double MOST_COARSE = 0.25;
	private static final double COARSE_OF_GAP = 0.15;
	/** In mm: of curves that are to touch. */
	private static final double LEAST_COARSE = 0.01;
	/** An outline of more is smoothed outwards, and made coarser until its room has no more. */
	private static final int MANY_CORNERS = 400;
	/** The buffer of one of more takes too long to try. */
	private static final int RAGGED_CORNERS = 3 * MANY_CORNERS;
	/** Of a ragged part's size: at most so coarse. */
	private static final double COARSEST_OF_RAGGED = 0.04;
	/** Of arcs of the gap to a right angle. */
	private static final int QUADRANT = 3;

	/** A part of so few corners and no curves keeps them all, and needs no more room than it must. */
	private static final int FEW_CORNERS = 60;
	/** At such corners the buffers of JTS come nearer than they should, by a thousandth and more. */
	private static final double INWARD_CORNERS = 1.005;
	/** Corners of the gap stay corners, so that rectangles stay rectangles. */
	private static final BufferParameters SHARP = new BufferParameters(QUADRANT, BufferParameters.CAP_FLAT,
			BufferParameters.JOIN_MITRE, 2);

	static {
		SHARP.setSimplifyFactor(0);
	}

	private Clearance() {
	}

	/** With all holes; see {@link #of(Region, double, BiPredicate)}. */
	public static Solid of(Region region, double gap) {
		return of(region, gap, (width, height) -> true);
	}

	/** With all dents; see {@link #of(Region, double, BiPredicate, int)}. */
	public static Solid of(Region region, double gap, BiPredicate<Double, Double> useful) {
		return of(region, gap, useful, Integer.MAX_VALUE);
	}

	/**
	 * @param gap    in mm between parts, 0 or more
	 * @param useful whether something may fit into a hole so wide and high; others are filled, for each costs corners
	 * @param pieces so many convex ones at most, if filling shallow dents makes them so few
	 * @return about the centre of the region's bounds
	 */
	public static Solid of(Region region, double gap, BiPredicate<Double, Double> useful, int pieces) {
		Point centre = region.bounds().centre();
		Region own = region.transformed(Transform.translation(-centre.x(), -centre.y()));
		if (own.contours().stream().allMatch(Clearance::isStraight) && own.nodeCount() <= FEW_CORNERS) {
			Geometry exact = Polygons.of(own, LEAST_COARSE);
			double half = isConvex(exact) ? gap / 2 : gap / 2 * INWARD_CORNERS;
			return Dents.filled(polygons(useful, gap == 0 ? exact : BufferOp.bufferOp(exact, half, SHARP)), pieces);
		}
		double size = Math.hypot(region.bounds().width(), region.bounds().height());
		double coarse = gap == 0 ? LEAST_COARSE
				: Math.max(LEAST_COARSE, Math.min(Math.min(MOST_COARSE, COARSE_OF_GAP * gap), size * COARSE));
		double coarsest = Math.max(coarse, size * COARSEST_OF_RAGGED);
		Geometry room = null;
		while (room == null || room.getNumPoints() > MANY_CORNERS && coarse <= coarsest) {
			room = room(own, gap, coarse, 2 * coarse <= coarsest, useful);
			coarse *= 2;
		}
		return Dents.filled(polygons(useful, room), pieces);
	}

	/**
	 * @param coarse in mm: by how much more than half the gap the room may reach, and half as much again
	 * @param choosy whether it may be done again, coarser
	 * @return null if it would have too many corners
	 */
	private static Geometry room(Region own, double gap, double coarse, boolean choosy,
			BiPredicate<Double, Double> useful) {
		// chords lie within curves by up to a quarter, arcs of the buffer as much, corners are left out by a half
		Geometry fine = Polygons.of(own, coarse / 4);
		double out = gap / 2 * INWARD_CORNERS + coarse;
		if (fine.getNumPoints() > MANY_CORNERS) {
			// a buffer of noise meets itself everywhere: fill what it hardly reaches into, then leave out what is straight
			double within = 2 * out;
			Geometry filled = Pockets.filled(fine, Pockets.mouth(out, coarse / 4),
					(width, height) -> Math.min(width, height) > within && useful.test(width - within, height - within));
			fine = TopologyPreservingSimplifier.simplify(filled, coarse / 4);
			out += coarse / 4;
			if (choosy && fine.getNumPoints() > RAGGED_CORNERS) {
				return null;
			}
		}
		BufferParameters parameters = new BufferParameters(quadrant(out, coarse / 4));
		parameters.setSimplifyFactor(0);
		Geometry wide = BufferOp.bufferOp(fine, out, parameters);
		return TopologyPreservingSimplifier.simplify(wide, coarse / 2);
	}

	/** So many chords to a right angle that none lies deeper within the arc. */
	private static int quadrant(double radius, double deviation) {
		double angle = 2 * Math.acos(Math.max(0, 1 - deviation / (2 * radius)));
		return Math.max(QUADRANT, (int) Math.ceil(Math.PI / 2 / angle));
	}

	private static boolean isConvex(Geometry geometry) {
		return geometry.getArea() >= geometry.convexHull().getArea() * (1 - 1e-12);
	}

	private static boolean isStraight(Contour contour) {
		return contour.segments().stream().allMatch(Line.class::isInstance);
	}

	private static List<Polygon> polygons(BiPredicate<Double, Double> useful, Geometry geometry) {
		List<Polygon> polygons = new ArrayList<>();
		for (int i = 0; i < geometry.getNumGeometries(); i++) {
			Polygon polygon = (Polygon) geometry.getGeometryN(i);
			List<LinearRing> holes = new ArrayList<>();
			for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
				Envelope box = polygon.getInteriorRingN(k).getEnvelopeInternal();
				if (useful.test(box.getWidth(), box.getHeight())) {
					holes.add(polygon.getInteriorRingN(k));
				}
			}
			polygons.add(polygon.getFactory().createPolygon(polygon.getExteriorRing(), holes.toArray(LinearRing[]::new)));
		}
		return polygons;
	}
}
