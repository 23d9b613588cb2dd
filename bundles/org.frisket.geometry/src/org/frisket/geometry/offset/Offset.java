package org.frisket.geometry.offset;

import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.RegionFitter;
import org.locationtech.jts.geom.Geometry;

/**
 * Grown and shrunk regions. All results are regions of curves: round joins are cubics, straight edges stay straight,
 * corners stay corners. The boundary lies within the tolerance of the true offset.
 */
public final class Offset {

	/** Flattening and arcs may use this share each, of which fitting sees both; the rest is the fit's. */
	private static final double SAMPLING_SHARE = 0.12;
	private static final double FIT_SHARE = 0.7;

	private Offset() {
	}

	/**
	 * Moves the boundary of a region outwards, or inwards by a negative distance. Parts that meet become one piece,
	 * holes that close are gone.
	 *
	 * @param distance in mm; 0 changes nothing but the holes
	 * @return empty if nothing is left
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	public static Region of(Region region, double distance, Corners corners, Holes holes, Tolerance tolerance,
			Monitor monitor) {
		return new Offsets(region, tolerance).at(distance, corners, holes, monitor);
	}

	/**
	 * Every place that a disc of the given radius can reach inside the region: sharp convex corners and whatever is
	 * thinner than the disc are gone.
	 */
	public static Region opened(Region region, double radius, Tolerance tolerance, Monitor monitor) {
		return moved(region, tolerance, monitor, -radius, radius);
	}

	/**
	 * Every place that a disc of the given radius outside the region cannot reach: sharp concave corners and gaps
	 * narrower than the disc are filled.
	 */
	public static Region closed(Region region, double radius, Tolerance tolerance, Monitor monitor) {
		return moved(region, tolerance, monitor, radius, -radius);
	}

	/** Closed and then opened: no gap, stroke or corner is finer than a disc of the given radius. */
	public static Region smoothed(Region region, double radius, Tolerance tolerance, Monitor monitor) {
		return moved(region, tolerance, monitor, radius, -2 * radius, radius);
	}

	private static Region moved(Region region, Tolerance tolerance, Monitor monitor, double... distances) {
		if (region.isEmpty() || distances[0] == 0) {
			return region;
		}
		double sampling = sampling(tolerance) / distances.length;
		Geometry geometry = Polygons.of(region, sampling);
		for (double distance : distances) {
			monitor.check();
			geometry = PolygonOffset.round(geometry, distance, sampling);
		}
		return fitted(geometry, tolerance, Memory.NONE, monitor);
	}

	/** How far in mm flattening and arcs may go each. */
	static double sampling(Tolerance tolerance) {
		return tolerance.mm() * SAMPLING_SHARE;
	}

	static Region fitted(Geometry polygonal, Tolerance tolerance, Memory curves, Monitor monitor) {
		return new RegionFitter(tolerance.share(FIT_SHARE), sampling(tolerance)).remembering(curves).fit(polygonal, monitor);
	}
}
