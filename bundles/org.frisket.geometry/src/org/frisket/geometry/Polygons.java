package org.frisket.geometry;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.internal.CanonicalOrder;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;

/**
 * The bridge to JTS, which knows straight edges only. Coordinates keep their values (y down); an outer contour
 * therefore becomes a ring that JTS calls clockwise, which is the usual way of its shells.
 */
public final class Polygons {

	private static final int CLOSED_RING = 4;
	private static final int HALVINGS = 40;

	private Polygons() {
	}

	/** Full double precision. */
	public static GeometryFactory factory() {
		return Factory.FLOATING;
	}

	/**
	 * The region with its curves flattened.
	 *
	 * @param deviation largest distance in mm between a curve and its chords, positive
	 * @return a {@link Polygon}, or a MultiPolygon unless there is exactly one piece
	 */
	public static Geometry of(Region region, double deviation) {
		Polygon[] polygons = region.pieces().stream().map(p -> of(p, deviation)).toArray(Polygon[]::new);
		return polygons.length == 1 ? polygons[0] : factory().createMultiPolygon(polygons);
	}

	/** One piece with its curves flattened; see {@link #of(Region, double)}. */
	public static Polygon of(Piece piece, double deviation) {
		return factory().createPolygon(ring(piece.outer(), deviation),
				piece.holes().stream().map(h -> ring(h, deviation)).toArray(LinearRing[]::new));
	}

	/**
	 * A closed contour as a ring in its own direction. A contour so small that the deviation would leave fewer than
	 * three corners is flattened finer.
	 */
	public static LinearRing ring(Contour contour, double deviation) {
		List<Point> points = contour.flattened(deviation);
		for (int i = 0; i < HALVINGS && points.size() < CLOSED_RING - 1; i++) {
			points = contour.flattened(Math.scalb(deviation, -2 * (i + 1)));
		}
		Coordinate[] coordinates = new Coordinate[points.size() + 1];
		for (int i = 0; i < points.size(); i++) {
			coordinates[i] = new Coordinate(points.get(i).x(), points.get(i).y());
		}
		coordinates[points.size()] = coordinates[0].copy();
		return factory().createLinearRing(coordinates);
	}

	/**
	 * The polygons of a geometry as a region of straight segments, wound and ordered as a region must be; points and
	 * lines are passed over.
	 * <p>
	 * The rings are taken as they are. JTS allows rings to touch at a point where a region does not: where that can
	 * happen pass {@link #toOutline(Geometry)} through the outline cleaner instead.
	 */
	public static Region toRegion(Geometry polygonal) {
		List<Piece> pieces = new ArrayList<>();
		for (Polygon polygon : polygonsIn(polygonal)) {
			List<Contour> holes = new ArrayList<>();
			for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
				holes.add(contour(polygon.getInteriorRingN(i), false));
			}
			pieces.add(new Piece(contour(polygon.getExteriorRing(), true), holes));
		}
		return new Region(CanonicalOrder.sorted(pieces));
	}

	/** All rings of the polygons in a geometry as closed contours, wound as in {@link #toRegion(Geometry)}. */
	public static Outline toOutline(Geometry polygonal) {
		return toRegion(polygonal).toOutline();
	}

	/** The polygons of several geometries, none of which may touch any other. */
	public static Geometry together(List<Geometry> apart) {
		return factory().createMultiPolygon(apart.stream().flatMap(each -> polygonsIn(each).stream())
				.toArray(Polygon[]::new));
	}

	private static List<Polygon> polygonsIn(Geometry geometry) {
		List<Polygon> found = new ArrayList<>();
		collect(geometry, found);
		return found;
	}

	private static void collect(Geometry geometry, List<Polygon> found) {
		if (geometry instanceof Polygon polygon) {
			if (!polygon.isEmpty()) {
				found.add(polygon);
			}
		} else if (geometry instanceof GeometryCollection) {
			for (int i = 0; i < geometry.getNumGeometries(); i++) {
				collect(geometry.getGeometryN(i), found);
			}
		}
	}

	private static Contour contour(LinearRing ring, boolean outer) {
		CoordinateSequence sequence = ring.getCoordinateSequence();
		List<Point> corners = new ArrayList<>(sequence.size());
		for (int i = 0; i + 1 < sequence.size(); i++) {
			Point corner = new Point(sequence.getX(i), sequence.getY(i));
			if (corners.isEmpty() || !corner.equals(corners.get(corners.size() - 1))) {
				corners.add(corner);
			}
		}
		Contour contour = Contour.polygon(corners);
		// counter-clockwise to the viewer is clockwise where y points up
		boolean viewerCounterClockwise = !Orientation.isCCW(sequence);
		return viewerCounterClockwise == outer ? contour : contour.reversed();
	}

	/** Made on first use. */
	private static final class Factory {
		static final GeometryFactory FLOATING = new GeometryFactory(new PrecisionModel());
	}
}
