package org.frisket.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Transform;
import org.locationtech.jts.geom.Geometry;

/** Shapes to measure with, and what peers that know straight edges only get of them. */
final class Flattened {

	private static final double KAPPA = 4 * (Math.sqrt(2) - 1) / 3;
	private static final int CORNERS = 7;
	private static final int LINKS = 25;

	private Flattened() {
	}

	/** Overlapping discs and stars in rows, with about so many segments together. */
	static List<Contour> crowd(int segments) {
		List<Contour> crowd = new ArrayList<>();
		int side = (int) Math.ceil(Math.sqrt(segments / 5.5));
		for (int i = 0; i < side * side; i++) {
			// each reaches into its neighbours, none stands like another
			double x = i % side * 9 + Math.sin(i) * 1.5;
			double y = i / side * 9 + Math.cos(1.7 * i) * 1.5;
			crowd.add(i % 2 == 0 ? circle(x, y, 5 + 0.5 * Math.sin(3.1 * i)) : star(x, y, 5.5, i));
		}
		return crowd;
	}

	/** Chains of overlapping ellipses that wander about a sheet and cross each other, with about so many segments together. */
	static List<Contour> chains(int segments) {
		Random random = new Random(7);
		List<Contour> chains = new ArrayList<>();
		int count = segments / 4;
		double side = Math.sqrt(count) * 12;
		Point place = Point.ORIGIN;
		for (int i = 0; i < count; i++) {
			if (i % LINKS == 0) {
				place = new Point(random.nextDouble() * side, random.nextDouble() * side);
			}
			double direction = 2 * Math.PI * random.nextDouble();
			place = place.plus(new Point(Math.cos(direction), Math.sin(direction)).times(4));
			chains.add(circle(0, 0, 2 + 2 * random.nextDouble())
					.transformed(new Transform(1, 0, 0, 0.4 + random.nextDouble(), place.x(), place.y())));
		}
		return chains;
	}

	static Contour circle(double x, double y, double radius) {
		OutlineBuilder pen = new OutlineBuilder();
		pen.moveTo(new Point(x + radius, y));
		for (int i = 0; i < 4; i++) {
			Point from = new Point(Math.cos(-i * Math.PI / 2), Math.sin(-i * Math.PI / 2));
			Point to = new Point(Math.cos(-(i + 1) * Math.PI / 2), Math.sin(-(i + 1) * Math.PI / 2));
			Point centre = new Point(x, y);
			pen.cubicTo(centre.plus(from.plus(to.times(KAPPA)).times(radius)),
					centre.plus(to.plus(from.times(KAPPA)).times(radius)), centre.plus(to.times(radius)));
		}
		pen.close();
		return pen.build().contours().get(0);
	}

	private static Contour star(double x, double y, double radius, int turn) {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i < CORNERS; i++) {
			double angle = -2 * Math.PI * i / CORNERS + turn;
			double reach = i % 2 == 0 ? radius : 0.7 * radius;
			corners.add(new Point(x + reach * Math.cos(angle), y + reach * Math.sin(angle)));
		}
		return Contour.polygon(corners);
	}

	static int segments(List<Contour> contours) {
		return contours.stream().mapToInt(contour -> contour.segments().size()).sum();
	}

	static List<Geometry> polygons(List<Contour> contours, double deviation) {
		return contours.stream().map(contour -> (Geometry) Polygons.factory().createPolygon(
				Polygons.ring(contour, deviation))).toList();
	}
}
