package org.frisket.geometry.measure;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Polygons;
import org.frisket.geometry.offset.PolygonOffset;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The parts of a polygon that a disc cannot reach and that are no mere corners. The disc's reach is found by opening:
 * shrunk by the radius, then grown by it. Growing a little more than that keeps the films out which flattening leaves
 * along every edge.
 */
final class ThinParts {

	private static final double FLATTENING = 1.0 / 32;
	private static final double FILM = 0.2;

	private final double tolerance;
	private final double film;

	ThinParts(double tolerance) {
		this.tolerance = tolerance;
		film = FILM * tolerance;
	}

	double flatteningDeviation() {
		return FLATTENING * tolerance;
	}

	/** The polygon's unreachable parts, grown back to where the film ends. */
	List<Geometry> of(Polygon polygon, double width) {
		Geometry centres = PolygonOffset.round(polygon, -width / 2, flatteningDeviation());
		List<Geometry> parts = new ArrayList<>();
		if (centres.isEmpty()) {
			parts.add(polygon);
			return parts;
		}
		List<Geometry> reaches = new ArrayList<>();
		for (int i = 0; i < centres.getNumGeometries(); i++) {
			reaches.add(PolygonOffset.round(centres.getGeometryN(i), width / 2 + film, flatteningDeviation()));
		}
		IndexedFacetDistance toCentres = new IndexedFacetDistance(centres);
		IndexedFacetDistance toOutline = new IndexedFacetDistance(polygon.getBoundary());
		Geometry unreached = OverlayNGRobust.overlay(polygon, OverlayNGRobust.union(reaches), OverlayNG.DIFFERENCE);
		for (Polygon part : polygons(unreached)) {
			double depth = farthest(Densifier.densify(part, width / 2), toCentres) - width / 2;
			if (depth > tolerance && isNoCorner(part, depth, width, toOutline)) {
				parts.add(restored(part, polygon));
			}
		}
		addNecksWithoutLength(polygon, reaches, parts);
		return parts;
	}

	private static double farthest(Geometry part, IndexedFacetDistance toCentres) {
		double farthest = 0;
		for (Coordinate coordinate : part.getCoordinates()) {
			farthest = Math.max(farthest, toCentres.distance(Polygons.factory().createPoint(coordinate)));
		}
		return farthest;
	}

	private boolean isNoCorner(Polygon part, double depth, double width, IndexedFacetDistance toOutline) {
		Mouths mouths = Mouths.of(part, toOutline, film / 4);
		// a disc that touches both sides of a corner touches them this much farther back once it is grown by the film
		double lost = 2 * Math.sqrt(width * film);
		return mouths.count(tolerance) != 1 || depth > mouths.widest() + lost;
	}

	/** The part with the film that was taken from it, but without the films along the edges. */
	private Geometry restored(Polygon part, Polygon whole) {
		return OverlayNGRobust.overlay(PolygonOffset.round(part, 2 * film, flatteningDeviation()), whole,
				OverlayNG.INTERSECTION);
	}

	/**
	 * Where two parts of what the disc reaches overlap, their centres being apart, the way between is narrower than
	 * the disc, even if every point of it is covered.
	 */
	private void addNecksWithoutLength(Polygon polygon, List<Geometry> reaches, List<Geometry> parts) {
		for (int i = 0; i < reaches.size(); i++) {
			for (int j = i + 1; j < reaches.size(); j++) {
				if (!reaches.get(i).getEnvelopeInternal().intersects(reaches.get(j).getEnvelopeInternal())) {
					continue;
				}
				Geometry shared = OverlayNGRobust.overlay(reaches.get(i), reaches.get(j), OverlayNG.INTERSECTION);
				for (Polygon overlap : polygons(shared)) {
					Geometry neck = OverlayNGRobust.overlay(overlap, polygon, OverlayNG.INTERSECTION);
					if (neck.getArea() > tolerance * tolerance && parts.stream().noneMatch(p -> p.intersects(neck))) {
						parts.add(neck);
					}
				}
			}
		}
	}

	private static List<Polygon> polygons(Geometry geometry) {
		List<Polygon> found = new ArrayList<>();
		for (int i = 0; i < geometry.getNumGeometries(); i++) {
			if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
				found.add(polygon);
			}
		}
		return found;
	}
}
