package org.frisket.impose.shape;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.PolygonHullSimplifier;

/**
 * Shallow dents are filled where many different shapes lie together, such as the names of all guests. How each of them
 * lies to each other is computed piece by piece; words hardly lie closer for the dents between their letters, but are of a
 * fifth of the pieces without them.
 */
public final class Dents {

	/** So few different shapes keep all their dents. */
	static final int FEW_SHAPES = 24;
	/** Meetings of two pieces, of all pairs of shapes in all turns: each takes about a microsecond and some ten bytes. */
	private static final double MOST_MEETINGS = 4e5;
	private static final int LEAST_PIECES = 4;
	/** Of a shape's area: what filling adds at first, and at most. */
	private static final double FIRST_SHARE = 0.02;
	private static final double MOST_SHARE = 0.08;

	private Dents() {
	}

	/** Whether there are so many different shapes that they are not all compared with all. */
	public static boolean isCrowd(int shapes) {
		return shapes > FEW_SHAPES;
	}

	/**
	 * Into how many convex pieces a shape may be parted.
	 *
	 * @param shapes how many different ones there are
	 * @param turns  into how many steps the full circle is parted
	 */
	public static int mostPieces(int shapes, int turns) {
		if (!isCrowd(shapes)) {
			return Integer.MAX_VALUE;
		}
		return Math.max(LEAST_PIECES, (int) Math.sqrt(2 * MOST_MEETINGS / turns) / shapes);
	}

	/** Fills the shallowest until the pieces are few enough, or it would add too much. What comes covers all of it. */
	static Solid filled(List<Polygon> polygons, int mostPieces) {
		Solid solid = Solid.of(polygons);
		for (double share = FIRST_SHARE; solid.pieces().size() > mostPieces && share <= MOST_SHARE; share *= 2) {
			solid = Solid.of(filled(polygons, share));
		}
		return solid;
	}

	private static List<Polygon> filled(List<Polygon> polygons, double share) {
		Geometry all = polygons.get(0).getFactory().createMultiPolygon(polygons.toArray(Polygon[]::new));
		Geometry hull = PolygonHullSimplifier.hullByAreaDelta(all, true, share);
		List<Polygon> filled = new ArrayList<>();
		for (int i = 0; i < hull.getNumGeometries(); i++) {
			filled.add((Polygon) hull.getGeometryN(i));
		}
		return filled;
	}
}
