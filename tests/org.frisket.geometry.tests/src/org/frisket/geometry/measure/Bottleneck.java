package org.frisket.geometry.measure;

import java.util.List;

import org.frisket.geometry.Point;
import org.frisket.geometry.offset.PolygonOffset;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Finds how thin a thin part gets, and where: the greatest width at which nothing of it is thin any more, by halving,
 * on the neighbourhood of the part alone.
 */
final class Bottleneck {

	private final Polygon whole;
	private final ThinParts parts;
	private final double tolerance;

	Bottleneck(Polygon whole, ThinParts parts, double tolerance) {
		this.whole = whole;
		this.parts = parts;
		this.tolerance = tolerance;
	}

	ThinPlace of(Geometry part, double width) {
		Polygon near = neighbourhood(part, width);
		Geometry thin = part;
		double low = 0;
		double high = width;
		while (high - low > tolerance / 4) {
			double middle = (low + high) / 2;
			Geometry left = thinWithin(near, part, middle);
			if (left == null) {
				low = middle;
			} else {
				high = middle;
				thin = left;
			}
		}
		Coordinate centre = MaximumInscribedCircle.getCenter(thin, tolerance / 4).getCoordinate();
		return new ThinPlace(new Point(centre.x, centre.y), high, part.getArea());
	}

	/** Wide enough round the part for discs of the width to stand on either side of it. */
	private Polygon neighbourhood(Geometry part, double width) {
		Geometry round = PolygonOffset.round(part, 1.5 * width, width / 20);
		Geometry cut = OverlayNGRobust.overlay(whole, round, OverlayNG.INTERSECTION);
		for (int i = 0; i < cut.getNumGeometries(); i++) {
			if (cut.getGeometryN(i) instanceof Polygon polygon && polygon.intersects(part)) {
				return polygon;
			}
		}
		return whole;
	}

	/** Cutting out the neighbourhood may have made thin parts of its own; these lie away from the part. */
	private Geometry thinWithin(Polygon near, Geometry part, double width) {
		List<Geometry> found = parts.of(near, width);
		for (Geometry candidate : found) {
			if (candidate.intersects(part)) {
				return candidate;
			}
		}
		return null;
	}
}
