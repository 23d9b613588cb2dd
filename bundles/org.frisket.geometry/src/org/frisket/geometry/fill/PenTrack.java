package org.frisket.geometry.fill;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/** What a round pen covers. */
public final class PenTrack {

	private PenTrack() {
	}

	/**
	 * @param lines that it draws, open or closed
	 * @param width of the pen in mm, positive
	 */
	public static Region of(List<Contour> lines, double width, Tolerance tolerance, Monitor monitor) {
		LineString[] strokes = lines.stream().map(line -> chords(line, tolerance)).toArray(LineString[]::new);
		return new OutlineCleaner().clean(
				Polygons.toOutline(Polygons.factory().createMultiLineString(strokes).buffer(width / 2)), FillRule.NON_ZERO,
				tolerance, monitor).region();
	}

	private static LineString chords(Contour line, Tolerance tolerance) {
		List<Point> points = new ArrayList<>(line.flattened(tolerance.mm()));
		if (line.isClosed()) {
			points.add(points.get(0));
		}
		return Polygons.factory()
				.createLineString(points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
	}
}
