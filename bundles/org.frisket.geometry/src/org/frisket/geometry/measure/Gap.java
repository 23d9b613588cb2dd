package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * Where two pieces come nearest to each other. Where they do so along a stretch, as two straight edges side by side,
 * it is the middle of the longest such stretch.
 *
 * @param from on the boundary of the first piece
 * @param to   on the boundary of the second piece
 */
public record Gap(Point from, Point to) {

	/** Of the tolerance; each of the two boundaries is flattened by this. */
	private static final double FLATTENING = 0.25;
	/** Of the gap: by so much more it still counts as one of its narrowest places. */
	private static final double ALIKE = 0.01;
	private static final int SAMPLES = 64;

	/** In mm. */
	public double width() {
		return from.distance(to);
	}

	/** To within the tolerance. */
	public static Gap between(Piece one, Piece other, Tolerance tolerance) {
		Polygon first = Polygons.of(one, tolerance.mm() * FLATTENING);
		Polygon second = Polygons.of(other, tolerance.mm() * FLATTENING);
		IndexedFacetDistance toFirst = new IndexedFacetDistance(first);
		IndexedFacetDistance toSecond = new IndexedFacetDistance(second);
		Coordinate[] nearest = toSecond.nearestPoints(first);
		double least = nearest[0].distance(nearest[1]);
		double most = least + Math.max(tolerance.mm(), ALIKE * least);
		// seen from each side the stretch reaches too far at its own corners, so that the middle lies between the two
		Coordinate near = stretches(first, toSecond, most).stream().max(Comparator.comparingDouble(Gap::length))
				.map(Gap::middle).orElse(nearest[1]);
		Coordinate across = nearest(toSecond, near);
		Coordinate far = stretches(second, toFirst, most).stream().map(Gap::middle)
				.min(Comparator.comparingDouble(across::distance)).orElse(across);
		Coordinate back = nearest(toFirst, far);
		Coordinate centre = new Coordinate((near.x + across.x + far.x + back.x) / 4,
				(near.y + across.y + far.y + back.y) / 4);
		return new Gap(point(nearest(toFirst, centre)), point(nearest(toSecond, centre)));
	}

	private static Coordinate nearest(IndexedFacetDistance facets, Coordinate to) {
		return facets.nearestPoints(Polygons.factory().createPoint(to))[0];
	}

	private static Point point(Coordinate c) {
		return new Point(c.x, c.y);
	}

	private static List<List<Coordinate>> stretches(Polygon polygon, IndexedFacetDistance facets, double most) {
		return rings(polygon).stream().flatMap(ring -> stretches(ring, facets, most).stream()).toList();
	}

	private static List<LineString> rings(Polygon polygon) {
		List<LineString> rings = new ArrayList<>();
		rings.add(polygon.getExteriorRing());
		for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
			rings.add(polygon.getInteriorRingN(i));
		}
		return rings;
	}

	/** The parts of a ring that lie within a distance, as points along it. */
	private static List<List<Coordinate>> stretches(LineString ring, IndexedFacetDistance facets, double most) {
		List<List<Coordinate>> stretches = new ArrayList<>();
		List<Coordinate> current = new ArrayList<>();
		Coordinate[] corners = ring.getCoordinates();
		boolean startsWithin = false;
		for (int i = 1; i < corners.length; i++) {
			Geometry edge = ring.getFactory().createLineString(new Coordinate[] { corners[i - 1], corners[i] });
			int samples = facets.isWithinDistance(edge, most) ? SAMPLES : 1;
			for (int k = i == 1 ? 0 : 1; k <= samples; k++) {
				double t = (double) k / samples;
				Coordinate at = new Coordinate(corners[i - 1].x + t * (corners[i].x - corners[i - 1].x),
						corners[i - 1].y + t * (corners[i].y - corners[i - 1].y));
				boolean within = samples > 1 && facets.isWithinDistance(ring.getFactory().createPoint(at), most);
				startsWithin |= within && i == 1 && k == 0;
				if (within) {
					current.add(at);
				} else if (!current.isEmpty()) {
					stretches.add(current);
					current = new ArrayList<>();
				}
			}
		}
		if (!current.isEmpty() && startsWithin && !stretches.isEmpty()) {
			// the ring starts amid a stretch
			current.addAll(stretches.remove(0));
		}
		if (!current.isEmpty()) {
			stretches.add(current);
		}
		return stretches;
	}

	private static double length(List<Coordinate> stretch) {
		double length = 0;
		for (int i = 1; i < stretch.size(); i++) {
			length += stretch.get(i - 1).distance(stretch.get(i));
		}
		return length;
	}

	private static Coordinate middle(List<Coordinate> stretch) {
		double left = length(stretch) / 2;
		for (int i = 1; i < stretch.size(); i++) {
			Coordinate before = stretch.get(i - 1);
			double step = before.distance(stretch.get(i));
			if (step >= left && step > 0) {
				double t = left / step;
				return new Coordinate(before.x + t * (stretch.get(i).x - before.x),
						before.y + t * (stretch.get(i).y - before.y));
			}
			left -= step;
		}
		return stretch.get(stretch.size() - 1);
	}
}
