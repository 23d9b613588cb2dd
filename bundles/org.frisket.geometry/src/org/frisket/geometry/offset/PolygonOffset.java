package org.frisket.geometry.offset;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Polygons;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Offsets of flattened regions, for steps that go on with polygons. Nothing is fitted here. */
public final class PolygonOffset {

	/** JTS drops concave vertices up to this fraction of the distance; its own default costs accuracy. */
	private static final double SIMPLIFY_FACTOR = 1e-4;

	private static final int MOST_QUADRANT_SEGMENTS = 500;

	private PolygonOffset() {
	}

	/**
	 * Everything within {@code distance} of the polygons, or farther than that from their outside if it is negative.
	 *
	 * @param deviation how far in mm the chords of arcs may lie from the arcs
	 */
	public static Geometry round(Geometry polygonal, double distance, double deviation) {
		return offset(polygonal, distance, BufferParameters.JOIN_ROUND, quadrantSegments(distance, deviation));
	}

	/** As {@link #round}, corners cut straight across. */
	public static Geometry bevelled(Geometry polygonal, double distance) {
		return offset(polygonal, distance, BufferParameters.JOIN_BEVEL, 1);
	}

	/** The polygons without their holes, and without what lay in the holes. */
	public static Geometry filled(Geometry polygonal) {
		List<Geometry> shells = new ArrayList<>();
		for (int i = 0; i < polygonal.getNumGeometries(); i++) {
			if (polygonal.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
				shells.add(Polygons.factory().createPolygon(polygon.getExteriorRing()));
			}
		}
		return shells.isEmpty() ? polygonal : OverlayNGRobust.union(shells);
	}

	private static Geometry offset(Geometry polygonal, double distance, int join, int quadrantSegments) {
		BufferParameters parameters = new BufferParameters(quadrantSegments);
		parameters.setJoinStyle(join);
		parameters.setSimplifyFactor(SIMPLIFY_FACTOR);
		return BufferOp.bufferOp(polygonal, distance, parameters);
	}

	/** JTS may miss an arc by twice what its chords would, so each chord gets half. */
	private static int quadrantSegments(double distance, double deviation) {
		double radius = Math.abs(distance);
		double step = 2 * Math.acos(Math.max(0, 1 - deviation / (2 * radius)));
		return (int) Math.min(MOST_QUADRANT_SEGMENTS, Math.max(2, Math.ceil(Math.PI / 2 / step)));
	}
}
