package org.frisket.impose;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Shapes for tests, and what JTS thinks of layouts. */
public final class Figures {

	private static final GeometryFactory FACTORY = new GeometryFactory();

	private Figures() {
	}

	public static Region rectangle(double width, double height) {
		return polygon(0, 0, width, 0, width, height, 0, height);
	}

	public static Region polygon(double... xy) {
		return Polygons.toRegion(FACTORY.createPolygon(ring(xy)));
	}

	/** A rectangle with a rectangular hole, both about the same centre. */
	public static Region frame(double width, double height, double band) {
		return Polygons.toRegion(FACTORY.createPolygon(ring(0, 0, width, 0, width, height, 0, height),
				new LinearRing[] { ring(band, band, width - band, band, width - band, height - band, band, height - band) }));
	}

	public static Region disc(double radius) {
		return Polygons.toRegion(FACTORY.createPoint(new Coordinate(0, 0)).buffer(radius, 16));
	}

	/** A star about the origin with corners at uneven distances: simple, seldom convex. */
	public static Polygon star(SplittableRandom random, int corners, double size) {
		double[] xy = new double[2 * corners];
		for (int i = 0; i < corners; i++) {
			double r = size * (0.25 + 0.75 * random.nextDouble());
			double a = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / corners;
			xy[2 * i] = r * Math.cos(a);
			xy[2 * i + 1] = r * Math.sin(a);
		}
		return FACTORY.createPolygon(ring(xy));
	}

	/** A trefoil with noise. @param noise by how much corners may lie further out, in mm */
	public static Region ragged(SplittableRandom random, int corners, double size, double noise) {
		double[] xy = new double[2 * corners];
		for (int i = 0; i < corners; i++) {
			double a = 2 * Math.PI * i / corners;
			double r = size * (0.7 + 0.3 * Math.sin(3 * a)) + noise * random.nextDouble();
			xy[2 * i] = r * Math.cos(a);
			xy[2 * i + 1] = r * Math.sin(a);
		}
		return polygon(xy);
	}

	/** As ragged as a word of joined letters: strokes that go up, down or neither, with dents between. */
	public static Region word(SplittableRandom random, int letters) {
		int corners = 4 * letters;
		double[] xy = new double[4 * corners];
		for (int i = 0; i < corners; i++) {
			double up = i % 4 < 2 ? 3 : 6 + 5 * random.nextDouble();
			double down = i % 8 < 6 ? 0 : 4 * random.nextDouble();
			xy[2 * i] = 0.9 * i;
			xy[2 * i + 1] = -down;
			xy[4 * corners - 2 - 2 * i] = 0.9 * i;
			xy[4 * corners - 1 - 2 * i] = up;
		}
		return polygon(xy);
	}

	/** The same with a hole of half its size in places where there is room. */
	public static Polygon ring(SplittableRandom random, int corners, double size) {
		Polygon star = star(random, corners, size);
		Geometry core = FACTORY.createPoint(new Coordinate(0, 0)).buffer(0.2 * size, 2);
		Geometry ring = star.difference(core);
		return ring instanceof Polygon polygon ? polygon : star;
	}

	private static LinearRing ring(double... xy) {
		Coordinate[] ring = new Coordinate[xy.length / 2 + 1];
		for (int i = 0; i < xy.length / 2; i++) {
			ring[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
		}
		ring[xy.length / 2] = ring[0].copy();
		return FACTORY.createLinearRing(ring);
	}

	/** The area that is covered twice, in mm². */
	public static double overlap(Layout layout) {
		double sum = 0;
		List<Geometry> placed = placed(layout);
		for (int i = 0; i < placed.size(); i++) {
			for (int j = 0; j < i; j++) {
				if (sameSheet(layout, i, j)
						&& placed.get(i).getEnvelopeInternal().intersects(placed.get(j).getEnvelopeInternal())) {
					sum += OverlayNGRobust.overlay(placed.get(i), placed.get(j), OverlayNG.INTERSECTION).getArea();
				}
			}
		}
		return sum;
	}

	/** The least distance between two parts of a sheet. */
	public static double leastGap(Layout layout) {
		double least = Double.POSITIVE_INFINITY;
		List<Geometry> placed = placed(layout);
		for (int i = 0; i < placed.size(); i++) {
			for (int j = 0; j < i; j++) {
				if (sameSheet(layout, i, j)) {
					least = Math.min(least, placed.get(i).distance(placed.get(j)));
				}
			}
		}
		return least;
	}

	private static boolean sameSheet(Layout layout, int i, int j) {
		return layout.placements().get(i).sheet() == layout.placements().get(j).sheet();
	}

	private static List<Geometry> placed(Layout layout) {
		return layout.placements().stream().map(p -> Polygons.of(p.region(), 0.001)).toList();
	}
}
