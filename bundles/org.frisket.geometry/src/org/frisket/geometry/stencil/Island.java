package org.frisket.geometry.stencil;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** A part of the sheet that an opening runs all round: it falls out. */
final class Island {

	private final Contour contour;
	private final List<Point> edge;
	private final Polygon area;
	private final Point middle;

	Island(Contour hole, double deviation) {
		contour = hole;
		edge = hole.flattened(deviation);
		area = Polygons.factory().createPolygon(Polygons.ring(hole, deviation));
		org.locationtech.jts.geom.Point centroid = area.getCentroid();
		Coordinate inside = area.contains(centroid) ? centroid.getCoordinate()
				: area.getInteriorPoint().getCoordinate();
		middle = new Point(inside.x, inside.y);
	}

	Contour contour() {
		return contour;
	}

	/** Its centroid, or another place in it if that lies outside. */
	Point middle() {
		return middle;
	}

	boolean holds(Point point) {
		return area.covers(Polygons.factory().createPoint(new Coordinate(point.x(), point.y())));
	}

	/** How far a place is from it: less than 0 within it, otherwise from its middle. */
	double distance(Point place) {
		return holds(place) ? -1 : middle.distance(place);
	}

	/** Distance from the middle at which a ray has left it for good. */
	double exit(Point along) {
		List<Double> met = new ArrayList<>();
		Opening.cross(edge, middle, along, met);
		return met.stream().mapToDouble(d -> d).max().orElse(0);
	}
}
