package org.frisket.geometry.measure;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.operation.distance.DistanceOp;

/** The edges of a piece: its outer contour and its holes. */
public final class Edges {

	/** Of the tolerance; edges are flattened by this. */
	private static final double FLATTENING = 0.25;

	private Edges() {
	}

	/** The point of the edges that is nearest to a place, to within the tolerance. */
	public static Point nearest(Piece piece, Point place, Tolerance tolerance) {
		Coordinate nearest = DistanceOp.nearestPoints(Polygons.of(piece, FLATTENING * tolerance.mm()).getBoundary(),
				Polygons.factory().createPoint(new Coordinate(place.x(), place.y())))[0];
		return new Point(nearest.x, nearest.y);
	}
}
