package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.RegionFitter;
import org.frisket.geometry.offset.PolygonOffset;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What fills a gap.
 *
 * @param region a little more than the gap, so that it hangs together with what stands on both sides
 * @param widest the middle of the gap where it is widest
 * @param width  there, in mm
 */
record GapFilling(Region region, org.frisket.geometry.Point widest, double width) {

	/** Parts of the tolerance: for flattening, for the overlap, for the curves. */
	private static final double FLATTENING = 0.1;
	private static final double OVERLAP = 0.4;
	private static final double FIT = 0.3;

	/** A mouth is rounder than what counts as a gap, so that it is none itself the next time. */
	private static final double MOUTH = 1.15;
	/** Of the width: thinner fillings are what rounding leaves along edges. */
	private static final double NOISE = 0.02;
	/** Where a mouth was given curves it may be a little too narrow: parts of the tolerance, and of the width. */
	private static final double CRESCENT = 2;
	private static final double MOUTH_LENGTH = 2.2;
	/** Cells of the grid that go into the deviation of the flattening. */
	private static final double GRID = 100;
	/** Corners more pointed than this become gaps towards their tip; it is a turn of a little over 160 degrees. */
	private static final double MITRE = 6;

	/** @param width below which a gap is filled, in mm */
	static List<GapFilling> of(Region region, double width, Tolerance tolerance, Monitor monitor) {
		double deviation = FLATTENING * Math.min(tolerance.mm(), width / 10);
		Geometry areas = Polygons.of(region, deviation);
		Geometry narrow = difference(closed(areas, width / 2, deviation, true), areas, deviation);
		List<Polygon> gaps = polygons(opened(narrow, NOISE * width)).stream()
				.filter(gap -> isGap(gap, width, CRESCENT * tolerance.mm())).toList();
		if (gaps.isEmpty()) {
			return List.of();
		}
		monitor.check();
		Geometry filled = difference(closed(areas, MOUTH * width / 2, deviation, false), areas, deviation);
		Map<Polygon, List<Polygon>> byFilling = new LinkedHashMap<>();
		STRtree tree = new STRtree();
		for (Polygon part : polygons(filled)) {
			byFilling.put(part, new ArrayList<>());
			tree.insert(part.getEnvelopeInternal(), part);
		}
		for (Polygon gap : gaps) {
			Point inside = gap.getInteriorPoint();
			for (Object part : tree.query(inside.getEnvelopeInternal())) {
				if (((Polygon) part).intersects(inside)) {
					byFilling.get(part).add(gap);
				}
			}
		}
		List<GapFilling> fillings = new ArrayList<>();
		byFilling.forEach((part, within) -> {
			monitor.check();
			if (!within.isEmpty()) {
				fillings.add(of(part, within, tolerance, monitor));
			}
		});
		return fillings;
	}

	/** A buffer with mitres is now and then not valid; it is mended, and rounded to a fine grid. */
	private static Geometry difference(Geometry from, Geometry what, double deviation) {
		try {
			return OverlayNGRobust.overlay(from, what, OverlayNG.DIFFERENCE);
		} catch (TopologyException e) {
			return OverlayNG.overlay(GeometryFixer.fix(from), what, OverlayNG.DIFFERENCE,
					new PrecisionModel(GRID / deviation));
		}
	}

	private static boolean isGap(Polygon gap, double width, double thick) {
		return gap.getEnvelopeInternal().getDiameter() > MOUTH_LENGTH * width || !mitred(gap, -thick / 2).isEmpty();
	}

	private static GapFilling of(Polygon part, List<Polygon> gaps, Tolerance tolerance, Monitor monitor) {
		Geometry overlapping = mitred(part, OVERLAP * tolerance.mm());
		Region region = new RegionFitter(tolerance.share(FIT), FLATTENING * tolerance.mm()).fit(overlapping, monitor);
		MaximumInscribedCircle widest = null;
		for (Polygon gap : gaps) {
			MaximumInscribedCircle circle = new MaximumInscribedCircle(gap, tolerance.mm());
			if (widest == null || circle.getRadiusLine().getLength() > widest.getRadiusLine().getLength()) {
				widest = circle;
			}
		}
		Coordinate centre = widest.getCenter().getCoordinate();
		return new GapFilling(region, new org.frisket.geometry.Point(centre.x, centre.y), 2 * widest.getRadiusLine().getLength());
	}

	/** Grown and shrunk again, which fills what a disc cannot enter; with corners its inner corners too. */
	private static Geometry closed(Geometry areas, double radius, double deviation, boolean corners) {
		Geometry grown = PolygonOffset.round(areas, radius, deviation);
		return corners ? mitred(grown, -radius) : PolygonOffset.round(grown, -radius, deviation);
	}

	private static Geometry opened(Geometry geometry, double width) {
		return mitred(mitred(geometry, -width / 2), width / 2);
	}

	private static Geometry mitred(Geometry geometry, double distance) {
		BufferParameters parameters = new BufferParameters();
		parameters.setJoinStyle(BufferParameters.JOIN_MITRE);
		parameters.setMitreLimit(MITRE);
		parameters.setSimplifyFactor(1e-4);
		return BufferOp.bufferOp(geometry, distance, parameters);
	}

	private static List<Polygon> polygons(Geometry geometry) {
		List<Polygon> polygons = new ArrayList<>();
		for (int i = 0; i < geometry.getNumGeometries(); i++) {
			if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
				polygons.add(polygon);
			}
		}
		return polygons;
	}
}
