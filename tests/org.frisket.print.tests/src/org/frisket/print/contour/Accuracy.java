package org.frisket.print.contour;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.measure.Straying;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * How far a traced contour lies from the true one, in pixels.
 *
 * @param hausdorff the furthest, both ways
 * @param rms       root of the mean square of the distances of places along the traced contour
 * @param area      how much too large it is, as a share of the true area
 * @param bias      how far its edge lies too far out on the average, which is that error by the length of the edge
 */
record Accuracy(double hausdorff, double rms, double area, double bias) {

	private static final int PLACES = 12;

	static Accuracy of(Region region, List<Contour> truth, double pixel) {
		double accuracy = pixel / 100;
		double hausdorff = Math.max(Straying.of(region.contours(), truth, accuracy, Monitor.NONE).mm(),
				Straying.of(truth, region.contours(), accuracy, Monitor.NONE).mm());
		GeometryFactory factory = new GeometryFactory();
		MultiLineString lines = factory.createMultiLineString(truth.stream().map(each -> line(each, pixel / 500, factory))
				.toArray(LineString[]::new));
		IndexedFacetDistance distance = new IndexedFacetDistance(lines);
		double squares = 0;
		double weight = 0;
		for (Contour contour : region.contours()) {
			for (var segment : contour.segments()) {
				double share = segment.length() / PLACES;
				for (int i = 0; i < PLACES; i++) {
					Point at = segment.at((i + 0.5) / PLACES);
					double off = distance.distance(factory.createPoint(new Coordinate(at.x(), at.y())));
					squares += share * off * off;
					weight += share;
				}
			}
		}
		double area = Math.abs(truth.stream().mapToDouble(Contour::signedArea).sum());
		return new Accuracy(hausdorff / pixel, Math.sqrt(squares / weight) / pixel, (region.area() - area) / area,
				(region.area() - area) / truth.stream().mapToDouble(Contour::length).sum() / pixel);
	}

	private static LineString line(Contour contour, double deviation, GeometryFactory factory) {
		List<Point> points = contour.flattened(deviation);
		Coordinate[] coordinates = new Coordinate[points.size() + 1];
		for (int i = 0; i < coordinates.length; i++) {
			Point point = points.get(i % points.size());
			coordinates[i] = new Coordinate(point.x(), point.y());
		}
		return factory.createLineString(coordinates);
	}
}
