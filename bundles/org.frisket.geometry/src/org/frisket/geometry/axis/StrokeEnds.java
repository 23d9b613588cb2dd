package org.frisket.geometry.axis;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.locationtech.jts.algorithm.Intersection;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Leads lines on to where a stroke ends, which an axis stops short of by about half the width of the stroke. */
final class StrokeEnds {

	/** Farther than this many radii is no longer the end of the same stroke. */
	private static final double FARTHEST = 2;

	private final Polygon boundary;
	private final double inset;

	/** @param inset how far before the boundary a line is to end, in mm */
	StrokeEnds(Piece piece, double spacing, double inset) {
		boundary = new BoundarySamples(piece, spacing).polygon();
		this.inset = inset;
	}

	/** Where a line goes on to that ends at a place with a direction and a radius; the place itself if there it stays. */
	Point beyond(Point end, Point direction, double radius) {
		Coordinate from = new Coordinate(end.x(), end.y());
		Point farthest = end.plus(direction.times(FARTHEST * radius));
		Coordinate to = new Coordinate(farthest.x(), farthest.y());
		double nearest = nearest(boundary.getExteriorRing(), from, to);
		for (int i = 0; i < boundary.getNumInteriorRing(); i++) {
			nearest = Math.min(nearest, nearest(boundary.getInteriorRingN(i), from, to));
		}
		double reach = (nearest <= FARTHEST * radius ? nearest : radius) - inset;
		return reach > 0 ? end.plus(direction.times(reach)) : end;
	}

	private static double nearest(LinearRing ring, Coordinate from, Coordinate to) {
		double nearest = Double.POSITIVE_INFINITY;
		Coordinate[] corners = ring.getCoordinates();
		for (int i = 1; i < corners.length; i++) {
			Coordinate met = Intersection.lineSegment(from, to, corners[i - 1], corners[i]);
			if (met != null && new LineSegment(from, to).projectionFactor(met) > 0) {
				nearest = Math.min(nearest, from.distance(met));
			}
		}
		return nearest;
	}
}
