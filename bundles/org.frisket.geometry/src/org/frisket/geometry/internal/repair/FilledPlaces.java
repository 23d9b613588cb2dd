package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.repair.Artwork.Area;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/** Where areas are filled, for asking what stands inside. */
final class FilledPlaces {

	private static final double FLATNESS = 0.1;

	private final Geometry filled;
	private final PreparedGeometry prepared;
	private final double tolerance;

	private FilledPlaces(Region region, double tolerance) {
		filled = Polygons.of(region, FLATNESS * tolerance);
		prepared = PreparedGeometryFactory.prepare(filled);
		this.tolerance = tolerance;
	}

	static FilledPlaces of(List<Area> areas, Tolerance tolerance, Monitor monitor) {
		Region region = UnitedAreas.region(areas, tolerance, monitor, new ArrayList<>());
		return new FilledPlaces(region, tolerance.mm());
	}

	/** Whether a closed line lies within what is filled, clear of its edge. */
	boolean surround(Contour line) {
		LinearRing ring = Polygons.ring(line, FLATNESS * tolerance);
		return !filled.isEmpty() && prepared.contains(ring)
				&& filled.getBoundary().distance(ring) > tolerance;
	}
}
