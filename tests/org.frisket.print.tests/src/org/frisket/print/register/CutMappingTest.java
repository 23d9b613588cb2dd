package org.frisket.print.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;

/** Cuts on their way from the design to the print. */
class CutMappingTest {

	private static final Tolerance FINE = new Tolerance(0.002);
	private static final Projection TILTED = new Projection(0.97, 0.05, 12, -0.04, 1.02, 3, 6e-4, -3e-4, 1);

	/** A closed contour of smooth cubics and lines with corners. */
	private static Contour blob(Random random, Point centre) {
		int nodes = 3 + random.nextInt(6);
		List<Point> places = new ArrayList<>();
		List<Point> ways = new ArrayList<>();
		for (int i = 0; i < nodes; i++) {
			double angle = -2 * Math.PI * i / nodes;
			double radius = 20 + 15 * random.nextDouble();
			places.add(centre.plus(new Point(radius * Math.cos(angle), radius * Math.sin(angle))));
			ways.add(new Point(Math.sin(angle), -Math.cos(angle)).times(8 + 6 * random.nextDouble()));
		}
		List<Segment> segments = new ArrayList<>();
		for (int i = 0; i < nodes; i++) {
			int next = (i + 1) % nodes;
			segments.add(random.nextInt(4) == 0 ? new Line(places.get(i), places.get(next))
					: new Cubic(places.get(i), places.get(i).plus(ways.get(i)), places.get(next).minus(ways.get(next)),
							places.get(next)));
		}
		return Contour.closed(segments);
	}

	private static double distance(Point p, List<Point> polyline) {
		double least = Double.POSITIVE_INFINITY;
		for (int i = 0; i + 1 < polyline.size(); i++) {
			Point a = polyline.get(i);
			Point way = polyline.get(i + 1).minus(a);
			double t = way.dot(way) == 0 ? 0 : Math.max(0, Math.min(1, p.minus(a).dot(way) / way.dot(way)));
			least = Math.min(least, p.distance(a.plus(way.times(t))));
		}
		return least;
	}

	private static List<Point> dense(Contour contour) {
		List<Point> points = contour.flattened(1e-4);
		if (contour.isClosed()) {
			points.add(points.get(0));
		}
		return points;
	}

	private static List<Point> samples(Contour contour) {
		List<Point> points = new ArrayList<>();
		for (Segment segment : contour.segments()) {
			for (int i = 0; i < 20; i++) {
				points.add(segment.at(i / 20.0));
			}
		}
		return points;
	}

	@Test
	void projectedCurvesKeepToTheMappedPlacesBothWays() throws RegisterException {
		Random random = new Random(4);
		CutMapping there = new CutMapping(TILTED, FINE);
		Projection inverse = TILTED.inverse();
		for (int round = 0; round < 20; round++) {
			Contour contour = blob(random, new Point(60 + 180 * random.nextDouble(), 60 + 80 * random.nextDouble()));
			Contour mapped = there.map(contour);
			assertTrue(mapped.isClosed());
			assertEquals(Math.signum(contour.signedArea()), Math.signum(mapped.signedArea()));
			List<Point> chords = dense(mapped);
			for (Point p : samples(contour)) {
				assertTrue(distance(TILTED.apply(p), chords) <= FINE.mm() + 2e-4);
			}
			List<Point> original = dense(contour);
			for (Point p : samples(mapped)) {
				// the map stretches by less than 1.7 anywhere on the sheet
				assertTrue(distance(inverse.apply(p), original) <= 1.7 * FINE.mm() + 2e-4);
			}
		}
	}

	@Test
	void smoothJointsStaySmoothAndLinesStayLines() throws RegisterException {
		Random random = new Random(9);
		for (int round = 0; round < 60; round++) {
			Contour contour = blob(random, new Point(150, 100));
			Contour mapped = new CutMapping(TILTED, FINE).map(contour);
			long lines = contour.segments().stream().filter(Line.class::isInstance).count();
			assertEquals(lines, mapped.segments().stream().filter(Line.class::isInstance).count());
			List<Segment> segments = mapped.segments();
			int kinks = 0;
			for (int i = 0; i < segments.size(); i++) {
				Segment before = segments.get(i);
				Segment after = segments.get((i + 1) % segments.size());
				kinks += before.endTangent().cross(after.startTangent()) > 1e-9 || before.endTangent()
						.cross(after.startTangent()) < -1e-9 ? 1 : 0;
			}
			int before = 0;
			for (int i = 0; i < contour.segments().size(); i++) {
				Point end = contour.segments().get(i).endTangent();
				Point start = contour.segments().get((i + 1) % contour.segments().size()).startTangent();
				before += Math.abs(end.cross(start)) > 1e-9 ? 1 : 0;
			}
			assertEquals(before, kinks);
		}
	}

	@Test
	void affineMapsAreExactAndAreasGrowByTheirDeterminant() throws RegisterException {
		Random random = new Random(2);
		for (int round = 0; round < 60; round++) {
			Transform map = new Transform(1 + random.nextDouble() / 10, random.nextDouble() / 5, -random.nextDouble() / 5,
					round % 2 == 0 ? 1.02 : -0.97, 12, -5);
			Contour contour = blob(random, new Point(150, 100));
			Outline mapped = new CutMapping(Projection.of(map), FINE).map(Outline.of(contour));
			assertEquals(contour.nodeCount(), mapped.contours().get(0).nodeCount());
			assertEquals(contour.signedArea() * map.determinant(), mapped.contours().get(0).signedArea(), 1e-8);
			Point there = map.apply(contour.segments().get(0).at(0.3));
			assertEquals(0, there.distance(mapped.contours().get(0).segments().get(0).at(0.3)), 1e-11);
		}
	}

	private static Region ring() {
		OutlineBuilder outer = new OutlineBuilder(1e-4);
		outer.startArc(new Point(150, 100), 40, 30, 0, 0, -2 * Math.PI);
		outer.close();
		OutlineBuilder hole = new OutlineBuilder(1e-4);
		hole.startArc(new Point(150, 100), 20, 15, 0, 0, 2 * Math.PI);
		hole.close();
		return new Region(List.of(new Piece(outer.build().contours().get(0), List.of(hole.build().contours().get(0)))));
	}

	@Test
	void regionsStayWoundAsRegionsAlsoInAMirror() throws RegisterException {
		Region ring = ring();
		assertTrue(ring.pieces().get(0).outer().signedArea() < 0 && ring.pieces().get(0).holes().get(0).signedArea() > 0);
		Projection flip = Projection.of(Transform.scaling(-1, 1));
		for (Projection map : List.of(TILTED, TILTED.then(flip), flip, TILTED.times(-2))) {
			Region mapped = new CutMapping(map, FINE).map(ring);
			assertTrue(mapped.pieces().get(0).outer().signedArea() < 0, map.toString());
			assertTrue(mapped.pieces().get(0).holes().get(0).signedArea() > 0, map.toString());
		}
	}

	/** The area of a projected disc, by the integral of the map's determinant over it. */
	@Test
	void theAreaUnderAProjectionIsThatOfItsIntegral() throws RegisterException {
		Region ring = ring();
		double area = 0;
		int steps = 400;
		for (int i = 0; i < steps; i++) {
			for (int j = 0; j < steps; j++) {
				double r = 0.5 + 0.5 * (i + 0.5) / steps;
				double angle = 2 * Math.PI * (j + 0.5) / steps;
				Point at = new Point(150 + 40 * r * Math.cos(angle), 100 + 30 * r * Math.sin(angle));
				area += TILTED.linear(at).determinant() * 40 * 30 * r * (0.5 / steps) * (2 * Math.PI / steps);
			}
		}
		assertEquals(area, new CutMapping(TILTED, FINE).map(ring).area(), 0.5);
	}

	@Test
	void aFinerToleranceTakesMoreNodesAndAPlainTiltFew() throws RegisterException {
		Contour circle = ring().pieces().get(0).outer();
		int fine = new CutMapping(TILTED, new Tolerance(1e-6)).map(circle).nodeCount();
		int coarse = new CutMapping(TILTED, new Tolerance(0.02)).map(circle).nodeCount();
		assertTrue(fine > coarse, fine + " and " + coarse);
		assertTrue(coarse <= 2 * circle.nodeCount(), coarse + " of " + circle.nodeCount());
	}

	@Test
	void whatReachesToInfinityIsRefused() {
		Projection steep = new Projection(1, 0, 0, 0, 1, 0, -0.01, 0, 1);
		Contour line = Contour.open(List.of(new Line(new Point(0, 0), new Point(200, 0))));
		Contour curve = Contour.open(List.of(new Cubic(new Point(0, 0), new Point(50, 9), new Point(150, 9), new Point(200, 0))));
		Contour bulge = Contour.open(List.of(new Cubic(new Point(0, 0), new Point(250, 9), new Point(250, 90), new Point(0, 90))));
		for (Contour each : List.of(line, curve, bulge)) {
			assertThrows(RegisterException.class, () -> new CutMapping(steep, FINE).map(each));
		}
	}
}
