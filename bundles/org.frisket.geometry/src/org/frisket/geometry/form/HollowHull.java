package org.frisket.geometry.form;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.RegionFitter;
import org.frisket.geometry.offset.PolygonOffset;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.hull.ConcaveHullOfPolygons;
import org.locationtech.jts.densify.Densifier;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * A hull that goes along with the hollows of a region: only mouths up to a width are bridged, by straight edges; inner
 * corners are bridged as far as that. It has no holes. The wider the mouths, the nearer it comes to the
 * {@linkplain ConvexHull convex hull}. It is the concave hull of JTS, by a triangulation of what lies between the edges.
 */
public final class HollowHull {

	private static final double SAMPLING_SHARE = 0.12;
	private static final double FIT_SHARE = 0.7;
	/** Long straight edges get corners, so that a bridge can start from them anywhere. */
	private static final double STEPS_PER_REACH = 4;
	/** On all edges together; with more the steps become longer. */
	private static final double MOST_STEPS = 20_000;

	/** In mm; far below any tolerance. */
	private static final double ROUNDING = 1e-6;

	private HollowHull() {
	}

	/**
	 * @param reach the widest mouth in mm that is bridged; 0 only fills holes
	 * @return several pieces if they are farther apart than the reach
	 * @throws IllegalArgumentException   if the reach is negative or not finite
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region of(Region region, double reach, Tolerance tolerance, Monitor monitor) {
		if (!(reach >= 0) || !Double.isFinite(reach)) {
			throw new IllegalArgumentException("a hull that reaches " + reach + " mm");
		}
		if (region.isEmpty()) {
			return region;
		}
		double sampling = tolerance.mm() * SAMPLING_SHARE;
		Geometry polygons = PolygonOffset.filled(Polygons.of(region, sampling));
		if (reach > 0) {
			double step = Math.max(reach / STEPS_PER_REACH, polygons.getLength() / MOST_STEPS);
			ConcaveHullOfPolygons hull = new ConcaveHullOfPolygons(Densifier.densify(polygons, step));
			hull.setMaximumEdgeLength(reach);
			monitor.check();
			polygons = withShallowHollows(hull.getHull(), reach);
		}
		monitor.check();
		return new RegionFitter(tolerance.share(FIT_SHARE), sampling).fit(polygons, monitor);
	}

	/**
	 * The triangulation is made within a frame and leaves out what is too flat to be told from it: hollows of the hull
	 * whose whole mouth is within reach are filled here.
	 */
	private static Geometry withShallowHollows(Geometry hull, double reach) {
		Geometry taut = hull.convexHull();
		Geometry hollows = OverlayNGRobust.overlay(taut, hull, OverlayNG.DIFFERENCE);
		List<Geometry> filled = new ArrayList<>(List.of(hull));
		for (int i = 0; i < hollows.getNumGeometries(); i++) {
			if (mouth(hollows.getGeometryN(i), taut) <= reach) {
				filled.add(hollows.getGeometryN(i));
			}
		}
		return filled.size() == 1 ? hull : OverlayNGRobust.union(filled);
	}

	/** The longest edge of a hollow that lies on the convex hull, in mm. */
	private static double mouth(Geometry hollow, Geometry taut) {
		Coordinate[] ring = hollow.getCoordinates();
		Coordinate[] hull = taut.getCoordinates();
		double mouth = 0;
		for (int i = 1; i < ring.length; i++) {
			Coordinate middle = new Coordinate((ring[i - 1].x + ring[i].x) / 2, (ring[i - 1].y + ring[i].y) / 2);
			if (Distance.pointToSegmentString(middle, hull) < ROUNDING
					&& Distance.pointToSegmentString(ring[i], hull) < ROUNDING) {
				mouth = Math.max(mouth, ring[i - 1].distance(ring[i]));
			}
		}
		return mouth;
	}
}
