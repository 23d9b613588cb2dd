package org.frisket.geometry.measure;

import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Where two regions overlap without one lying in the other. */
public final class Overlaps {

	private static final double FLATTENING = 0.25;

	private Overlaps() {
	}

	/** The widest place at which pieces of both overlap by more than the tolerance. */
	public static Optional<StrokeWidths.Width> deepest(Region one, Region other, Tolerance tolerance) {
		STRtree tree = new STRtree();
		for (Piece piece : other.pieces()) {
			tree.insert(envelope(piece.bounds()), Polygons.of(piece, tolerance.mm() * FLATTENING));
		}
		StrokeWidths.Width deepest = null;
		for (Piece piece : one.pieces()) {
			List<?> near = tree.query(envelope(piece.bounds()));
			if (near.isEmpty()) {
				continue;
			}
			Polygon flat = Polygons.of(piece, tolerance.mm() * FLATTENING);
			PreparedGeometry prepared = PreparedGeometryFactory.prepare(flat);
			for (Object candidate : near) {
				Polygon partner = (Polygon) candidate;
				if (prepared.intersects(partner)) {
					deepest = deeper(deepest, OverlayNGRobust.overlay(flat, partner, OverlayNG.INTERSECTION), flat, partner,
							tolerance);
				}
			}
		}
		return Optional.ofNullable(deepest);
	}

	private static StrokeWidths.Width deeper(StrokeWidths.Width known, Geometry common, Polygon one, Polygon other,
			Tolerance tolerance) {
		StrokeWidths.Width deepest = known;
		double slack = tolerance.mm();
		for (int i = 0; i < common.getNumGeometries(); i++) {
			// nothing sticks out of one that lies in the other
			if (common.getGeometryN(i) instanceof Polygon part && part.getArea() > slack * slack
					&& one.getArea() - common.getArea() > slack * one.getLength()
					&& other.getArea() - common.getArea() > slack * other.getLength()) {
				LineString radius = MaximumInscribedCircle.getRadiusLine(part, slack / 2);
				double width = 2 * radius.getLength();
				if (width > 2 * slack && (deepest == null || width > deepest.mm())) {
					Coordinate centre = radius.getCoordinateN(0);
					deepest = new StrokeWidths.Width(width, new Point(centre.x, centre.y));
				}
			}
		}
		return deepest;
	}

	private static Envelope envelope(Bounds bounds) {
		return new Envelope(bounds.minX(), bounds.maxX(), bounds.minY(), bounds.maxY());
	}
}
