package org.frisket.geometry.measure;

import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.DistanceOp;

/** A region that is moved about to see how far it stays from others; its curves are flattened once. */
public final class Clearance {

	private final Geometry geometry;

	private Clearance(Geometry geometry) {
		this.geometry = geometry;
	}

	/** Within half the tolerance of the region. */
	public static Clearance of(Region region, Tolerance tolerance) {
		return new Clearance(Polygons.of(region, tolerance.mm() / 2));
	}

	public Clearance at(Transform place) {
		return new Clearance(new AffineTransformation(place.a(), place.c(), place.e(), place.b(), place.d(), place.f())
				.transform(geometry));
	}

	/** In mm; 0 if the two overlap or touch. */
	public double to(Clearance other) {
		return geometry.isEmpty() || other.geometry.isEmpty() ? Double.POSITIVE_INFINITY
				: DistanceOp.distance(geometry, other.geometry);
	}
}
