package org.frisket.geometry.measure;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Tells of many points whether they lie in a piece, to within a tolerance. */
public final class PieceLocator {

	private static final double FLATTENING = 0.5;

	private final Polygon polygon;
	private final IndexedPointInAreaLocator locator;

	public PieceLocator(Piece piece, Tolerance tolerance) {
		polygon = Polygons.of(piece, tolerance.mm() * FLATTENING);
		locator = new IndexedPointInAreaLocator(polygon);
	}

	/** Points on the boundary count as within. */
	public boolean holds(Point point) {
		return locator.locate(new Coordinate(point.x(), point.y())) != Location.EXTERIOR;
	}

	/** How far outside the piece a point lies, in mm; 0 for one within. */
	public double distance(Point point) {
		return holds(point) ? 0 : polygon.distance(Polygons.factory().createPoint(new Coordinate(point.x(), point.y())));
	}

	/** A point well within the piece. */
	public Point inside() {
		Coordinate inside = polygon.getInteriorPoint().getCoordinate();
		return new Point(inside.x, inside.y);
	}
}
