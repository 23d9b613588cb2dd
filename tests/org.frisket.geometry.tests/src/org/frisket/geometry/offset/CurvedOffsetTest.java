package org.frisket.geometry.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.fit.Samples;
import org.frisket.geometry.internal.outset.CurveGrowth;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/** Offsets on the curves against the meaning of the word: distances from the shape, which JTS measures. */
class CurvedOffsetTest {

	private static final double EXACT = 1e-5;

	private static Optional<Region> by(Region region, double distance, double tolerance) {
		return new CurveGrowth(region, new Tolerance(tolerance), Memory.NONE).by(distance, Monitor.NONE);
	}

	/** Blobs and stars in a row, some so near to each other that they meet. */
	private static Region row(Random random, int count) {
		List<Piece> pieces = new ArrayList<>();
		double x = 0;
		for (int i = 0; i < count; i++) {
			Region shape = random.nextInt(3) == 0 ? star(random) : Samples.region(Samples.blob(random, 4));
			pieces.addAll(shape.transformed(Transform.translation(x, 3 * random.nextDouble())).pieces());
			x += 11 + 3 * random.nextDouble();
		}
		return new Region(pieces);
	}

	private static Region star(Random random) {
		double[] corners = new double[14];
		for (int i = 0; i < 7; i++) {
			double radius = i % 2 == 0 ? 5 : 2 + 2 * random.nextDouble();
			corners[2 * i] = radius * Math.cos(2 * Math.PI * i / 7);
			corners[2 * i + 1] = radius * Math.sin(2 * Math.PI * i / 7);
		}
		return Samples.polygon(corners);
	}

	private static double distance(IndexedFacetDistance edges, double x, double y) {
		return edges.distance(Polygons.factory().createPoint(new Coordinate(x, y)));
	}

	/** Every place of the edge at the distance, and every other place on the side where it belongs. */
	private static void assertIsOffset(Region region, double distance, Region result, double tolerance, Random random,
			String what) {
		Geometry shape = Polygons.of(region, EXACT);
		IndexedFacetDistance edges = new IndexedFacetDistance(shape.getBoundary());
		for (Segment segment : Samples.segments(result)) {
			for (int i = 0; i < 8; i++) {
				Point place = segment.at(i / 8.0);
				assertEquals(Math.abs(distance), distance(edges, place.x(), place.y()), tolerance, what + " at " + place);
			}
		}
		IndexedPointInAreaLocator inShape = new IndexedPointInAreaLocator(shape);
		Geometry flattened = Polygons.of(result, EXACT);
		assertTrue(flattened.isValid(), what);
		IndexedPointInAreaLocator inResult = result.isEmpty() ? null : new IndexedPointInAreaLocator(flattened);
		Bounds box = region.bounds().grown(Math.abs(distance) + 1);
		for (int i = 0; i < 400; i++) {
			double x = box.minX() + random.nextDouble() * box.width();
			double y = box.minY() + random.nextDouble() * box.height();
			Coordinate place = new Coordinate(x, y);
			double away = distance(edges, x, y);
			double outside = inShape.locate(place) == Location.EXTERIOR ? away : -away;
			if (Math.abs(outside - distance) > tolerance) {
				boolean inside = inResult != null && inResult.locate(place) != Location.EXTERIOR;
				assertEquals(outside < distance, inside, what + " at " + place);
			}
		}
	}

	@Test
	void offsetsKeepTheirDistanceEverywhere() {
		Random random = new Random(31);
		double tolerance = 0.02;
		int unclear = 0;
		int count = 0;
		for (int i = 0; i < 24; i++) {
			Region row = row(random, 1 + i % 3);
			for (double distance : new double[] { -1.5, -0.3, 0.2, 1, 2, 3.1, 4, 9, 21 }) {
				Optional<Region> result = by(row, distance, tolerance);
				count++;
				if (result.isEmpty()) {
					unclear++;
				} else {
					assertIsOffset(row, distance, result.get(), tolerance, random, "seed 31, row " + i + " by " + distance);
				}
			}
		}
		assertTrue(unclear <= count / 100, unclear + " of " + count + " went without a result");
	}

	/** Steiner 1840: A + P r + pi r^2; the shape's own area and perimeter come from its curves. */
	@Test
	void convexShapesFollowSteiner() {
		Random random = new Random(32);
		for (int i = 0; i < 30; i++) {
			Region convex = i % 2 == 0 ? Samples.regular(3 + random.nextInt(9), 1 + 9 * random.nextDouble())
					: Samples.region(Samples.ellipse(1, 2, 1 + 9 * random.nextDouble(), 3));
			double distance = 0.1 + 20 * random.nextDouble();
			Region result = by(convex, distance, 0.005).orElseThrow();
			double area = convex.area() + convex.perimeter() * distance + Math.PI * distance * distance;
			double perimeter = convex.perimeter() + 2 * Math.PI * distance;
			assertEquals(area, result.area(), 0.005 * perimeter);
			assertEquals(perimeter, result.perimeter(), 0.005 * 2 * Math.PI);
		}
	}

	@Test
	void linesStayLinesAndCurvesStayFew() {
		Region result = by(Samples.rectangle(0, 0, 20, 10), 8, 0.01).orElseThrow();
		assertEquals(4, Samples.segments(result).stream().filter(Line.class::isInstance).count());
		assertTrue(result.nodeCount() <= 12, result.nodeCount() + " nodes");
		Region ring = Samples.region(Samples.circle(0, 0, 10), Samples.circle(0, 0, 5));
		assertTrue(by(ring, 2, 0.01).orElseThrow().nodeCount() <= ring.nodeCount());
	}

	/** The hollow of a curve that is sharper than the distance leaves a corner where its sides cross. */
	@Test
	void sharpHollowBecomesACorner() {
		// a parabola y = x^2 / 2 from -4 to 4 below a lid: radius of curvature 1 at its bottom, filled outside
		Cubic hollow = Cubic.ofQuadratic(new Point(-4, 8), new Point(0, -8), new Point(4, 8));
		List<Segment> segments = List.of(hollow, new Line(new Point(4, 8), new Point(8, 8)),
				new Line(new Point(8, 8), new Point(8, -4)), new Line(new Point(8, -4), new Point(-8, -4)),
				new Line(new Point(-8, -4), new Point(-8, 8)), new Line(new Point(-8, 8), new Point(-4, 8)));
		Region cup = Samples.region(Contour.closed(segments));
		Region result = by(cup, 2, 0.001).orElseThrow();
		// on the axis at height h the nearest place of y = x^2 / 2 lies at x^2 = 2 h - 2, at a distance of sqrt(2 h - 1)
		assertTrue(Samples.segments(result).stream().anyMatch(s -> s.start().distance(new Point(0, 2.5)) < 1e-6));
	}

	/** Halfway between its edges a frame has lines that are just at the distance, from both. */
	@Test
	void whatCannotBeToldOnTheCurvesIsMadeByPolygons() {
		Region frame = Samples.region(Samples.rectangle(0, 0, 10, 10).contours().get(0),
				Samples.rectangle(2, 2, 6, 6).contours().get(0));
		assertTrue(by(frame, -1, 0.01).isEmpty());
		Region corners = Offset.of(frame, -1, Corners.ROUND, Holes.KEEP, new Tolerance(0.01), Monitor.NONE);
		assertEquals(4, corners.pieces().size());
		assertEquals(4 - Math.PI, corners.area(), 0.01 * corners.perimeter());
	}

	@Test
	void filledOffsetsAreThoseOfTheOutermostContours() {
		Region frame = Samples.region(Samples.circle(0, 0, 10), Samples.circle(0, 0, 6));
		Region nested = Samples.both(frame, Samples.region(Samples.circle(0, 0, 2)));
		Region disc = Samples.region(Samples.circle(0, 0, 10));
		for (double distance : new double[] { -1, 0, 1 }) {
			Region filled = Offset.of(nested, distance, Corners.ROUND, Holes.FILL, new Tolerance(0.01), Monitor.NONE);
			assertEquals(disc.pieces().size(), filled.pieces().size());
			assertEquals(Math.PI * (10 + distance) * (10 + distance), filled.area(), 0.01 * filled.perimeter());
		}
		assertEquals(disc.area(), Offset.of(nested, 0, Corners.MITRE, Holes.FILL, new Tolerance(0.01), Monitor.NONE).area(),
				1e-9);
	}

	@Test
	void cancelStopsTheWork() {
		Region row = row(new Random(33), 4);
		int[] asked = { 0 };
		assertThrows(CancellationException.class, () -> new CurveGrowth(row, new Tolerance(0.01), Memory.NONE).by(3,
				() -> ++asked[0] > 20));
		assertFalse(asked[0] > 21);
	}
}
