package org.frisket.geometry.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Shapes with known measures, and ways to measure results that do not use what is being tested. */
public final class Samples {

	private Samples() {
	}

	/** Corners as x, y, x, y ...; either way round. */
	public static Region polygon(double... xy) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < xy.length; i += 2) {
			corners.add(new Point(xy[i], xy[i + 1]));
		}
		return region(Contour.polygon(corners));
	}

	public static Region rectangle(double x, double y, double width, double height) {
		return polygon(x, y, x + width, y, x + width, y + height, x, y + height);
	}

	/** Edges without an inside. */
	static Geometry rectangleOutline() {
		return Polygons.of(rectangle(0, 0, 10, 10), 1).getBoundary();
	}

	public static Region regular(int corners, double circumradius) {
		double[] xy = new double[2 * corners];
		for (int i = 0; i < corners; i++) {
			xy[2 * i] = circumradius * Math.cos(2 * Math.PI * i / corners);
			xy[2 * i + 1] = circumradius * Math.sin(2 * Math.PI * i / corners);
		}
		return polygon(xy);
	}

	/** Sixteen cubics, off the true circle by less than 1e-7 of the radius. */
	public static Contour circle(double x, double y, double radius) {
		return ellipse(x, y, radius, radius);
	}

	public static Contour ellipse(double x, double y, double a, double b) {
		int arcs = 16;
		double handle = 4.0 / 3 * Math.tan(Math.PI / 2 / arcs);
		List<Cubic> cubics = new ArrayList<>();
		Point first = new Point(x + a, y);
		Point start = first;
		for (int i = 1; i <= arcs; i++) {
			double from = 2 * Math.PI * (i - 1) / arcs;
			double to = 2 * Math.PI * i / arcs;
			Point end = i == arcs ? first : new Point(x + a * Math.cos(to), y + b * Math.sin(to));
			cubics.add(new Cubic(start,
					start.plus(new Point(-a * Math.sin(from), b * Math.cos(from)).times(handle)),
					end.minus(new Point(-a * Math.sin(to), b * Math.cos(to)).times(handle)), end));
			start = end;
		}
		return Contour.closed(cubics);
	}

	/** One piece, its contours wound as a region's must be. */
	public static Region region(Contour outer, Contour... holes) {
		return new Region(List.of(new Piece(wound(outer, true),
				Stream.of(holes).map(h -> wound(h, false)).toList())));
	}

	public static Region both(Region one, Region other) {
		return new Region(Stream.concat(one.pieces().stream(), other.pieces().stream()).toList());
	}

	private static Contour wound(Contour contour, boolean outer) {
		return contour.signedArea() < 0 == outer ? contour : contour.reversed();
	}

	/** A closed smooth curve about the origin that swings between 0.7 and 1.3 of the radius. */
	public static Contour blob(Random random, double radius) {
		int nodes = 7 + random.nextInt(5);
		Point[] places = new Point[nodes];
		for (int i = 0; i < nodes; i++) {
			double angle = 2 * Math.PI * i / nodes;
			double r = radius * (0.7 + 0.6 * random.nextDouble());
			places[i] = new Point(r * Math.cos(angle), r * Math.sin(angle));
		}
		List<Cubic> cubics = new ArrayList<>();
		for (int i = 0; i < nodes; i++) {
			Point before = places[(i + nodes - 1) % nodes];
			Point from = places[i];
			Point to = places[(i + 1) % nodes];
			Point after = places[(i + 2) % nodes];
			cubics.add(new Cubic(from, from.plus(to.minus(before).times(1.0 / 6)),
					to.minus(after.minus(from).times(1.0 / 6)), to));
		}
		return Contour.closed(cubics);
	}

	/** Largest distance from any vertex of one to the edges of the other, both ways. */
	public static double hausdorff(Geometry one, Geometry other) {
		return Math.max(farthest(one, other), farthest(other, one));
	}

	private static double farthest(Geometry from, Geometry to) {
		IndexedFacetDistance distance = new IndexedFacetDistance(to);
		double farthest = 0;
		for (Coordinate coordinate : from.getCoordinates()) {
			farthest = Math.max(farthest, distance.distance(Polygons.factory().createPoint(coordinate)));
		}
		return farthest;
	}

	public static List<Segment> segments(Region region) {
		return region.contours().stream().flatMap(c -> c.segments().stream()).toList();
	}
}
