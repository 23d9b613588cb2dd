package org.frisket.geometry.axis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.geometry.offset.Corners;
import org.frisket.geometry.offset.Holes;
import org.frisket.geometry.offset.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/** Shapes made of strokes whose middle is known because they were drawn about it. */
class CentrelineTest {

	private static final Tolerance TOLERANCE = Tolerance.DEFAULT;

	private static Region union(Contour... contours) {
		return new OutlineCleaner().clean(Outline.of(contours), FillRule.NON_ZERO, TOLERANCE, Monitor.NONE).region();
	}

	/** A stroke of straight ends about a segment. */
	private static Contour bar(double x0, double y0, double x1, double y1, double width) {
		Point a = new Point(x0, y0);
		Point b = new Point(x1, y1);
		Point side = b.minus(a).unit().quarterTurn().times(width / 2);
		Contour bar = Contour.polygon(List.of(a.plus(side), b.plus(side), b.minus(side), a.minus(side)));
		return bar.signedArea() < 0 ? bar : bar.reversed();
	}

	private static List<Contour> lines(Region region) {
		return Centreline.of(region, 0, TOLERANCE, Monitor.NONE);
	}

	private static double farthest(Contour line, Point a, Point b) {
		return line.flattened(0.01).stream().mapToDouble(p -> distance(p, a, b)).max().orElseThrow();
	}

	private static double distance(Point p, Point a, Point b) {
		Point side = b.minus(a);
		double t = Math.max(0, Math.min(1, p.minus(a).dot(side) / side.dot(side)));
		return p.distance(a.towards(b, t));
	}

	@Test
	void barIsDrawnFromEndToEnd() {
		List<Contour> lines = lines(union(bar(0, 0, 20, 0, 3)));
		assertEquals(1, lines.size());
		assertEquals(20, lines.get(0).length(), 0.1);
		assertTrue(farthest(lines.get(0), new Point(0, 0), new Point(20, 0)) < 0.05);
	}

	@Test
	void insetLeavesRoomForThePen() {
		Region bar = union(bar(0, 0, 20, 0, 3));
		List<Contour> lines = Centreline.of(bar, 0.5, TOLERANCE, Monitor.NONE);
		assertEquals(19, lines.get(0).length(), 0.1);
	}

	@Test
	void barAtAnyAngleIsDrawnAlike() {
		for (int degrees = 0; degrees < 180; degrees += 13) {
			double a = Math.toRadians(degrees);
			Point end = new Point(15 * Math.cos(a), 15 * Math.sin(a));
			List<Contour> lines = lines(union(bar(0, 0, end.x(), end.y(), 2)));
			assertEquals(1, lines.size(), "at " + degrees);
			assertEquals(15, lines.get(0).length(), 0.1, "at " + degrees);
			assertTrue(farthest(lines.get(0), Point.ORIGIN, end) < 0.06, "at " + degrees);
		}
	}

	@Test
	void capsuleIsDrawnToTheEndsOfItsCaps() {
		Region capsule = union(bar(0, 0, 12, 0, 4), Shapes.circle(0, 0, 2), Shapes.circle(12, 0, 2));
		List<Contour> lines = lines(capsule);
		assertEquals(1, lines.size());
		assertEquals(16, lines.get(0).length(), 0.1);
		assertTrue(farthest(lines.get(0), new Point(-2, 0), new Point(14, 0)) < 0.05);
	}

	@Test
	void ringIsDrawnAsOneClosedLine() {
		Region ring = union(Shapes.circle(0, 0, 10), Shapes.circle(0, 0, 8).reversed());
		List<Contour> lines = lines(ring);
		assertEquals(1, lines.size());
		assertTrue(lines.get(0).isClosed());
		assertEquals(2 * Math.PI * 9, lines.get(0).length(), 0.1);
		lines.get(0).flattened(0.01).forEach(p -> assertEquals(9, p.length(), 0.03));
	}

	@Test
	void crossIsTwoStrokesStraightThrough() {
		List<Contour> lines = lines(union(bar(-10, 0, 10, 0, 3), bar(0, -10, 0, 10, 3)));
		assertEquals(2, lines.size());
		for (Contour line : lines) {
			assertEquals(20, line.length(), 0.1);
			assertTrue(Math.min(farthest(line, new Point(-10, 0), new Point(10, 0)),
					farthest(line, new Point(0, -10), new Point(0, 10))) < 0.1);
		}
	}

	@Test
	void slantedCrossIsTwoStrokesToo() {
		List<Contour> lines = lines(union(bar(-10, -4, 10, 4, 2.5), bar(-6, 9, 6, -9, 2.5)));
		assertEquals(2, lines.size());
		for (Contour line : lines) {
			assertTrue(Math.min(farthest(line, new Point(-10, -4), new Point(10, 4)),
					farthest(line, new Point(-6, 9), new Point(6, -9))) < 0.2);
		}
	}

	@Test
	void stemRunsUpToTheBarItStandsUnder() {
		List<Contour> lines = lines(union(bar(-8, 0, 8, 0, 3), bar(0, 0, 0, 15, 3)));
		assertEquals(2, lines.size());
		Contour across = lines.stream().max((a, b) -> Double.compare(a.bounds().width(), b.bounds().width())).orElseThrow();
		Contour stem = lines.stream().filter(line -> line != across).findFirst().orElseThrow();
		assertTrue(farthest(across, new Point(-8, 0), new Point(8, 0)) < 0.2);
		assertTrue(farthest(stem, new Point(0, 0), new Point(0, 15)) < 0.1);
		assertEquals(15, stem.length(), 0.2);
	}

	@Test
	void bendIsDrawnInOneGo() {
		List<Contour> lines = lines(union(bar(0, 0, 15, 0, 2), bar(0, -1, 0, 15, 2), bar(-1, 0, 1, 0, 2)));
		assertEquals(1, lines.size());
		assertFalse(lines.get(0).isClosed());
		assertEquals(30, lines.get(0).length(), 1);
	}

	@Test
	void threeStrokesMeetInOnePoint() {
		Contour[] bars = new Contour[3];
		for (int i = 0; i < 3; i++) {
			double a = Math.toRadians(90 + 120 * i);
			bars[i] = bar(0, 0, 12 * Math.cos(a), 12 * Math.sin(a), 2);
		}
		List<Contour> lines = lines(union(bars));
		assertEquals(2, lines.size());
		assertEquals(36, lines.stream().mapToDouble(Contour::length).sum(), 0.5);
		lines.forEach(line -> assertEquals(0, distanceFrom(line, Point.ORIGIN), 0.1, line.toString()));
	}

	private static double distanceFrom(Contour line, Point place) {
		List<Point> points = line.flattened(0.01);
		double least = Double.POSITIVE_INFINITY;
		for (int i = 1; i < points.size(); i++) {
			least = Math.min(least, distance(place, points.get(i - 1), points.get(i)));
		}
		return least;
	}

	@Test
	void dotBecomesARingHalfwayIn() {
		List<Contour> lines = lines(union(Shapes.circle(5, 5, 2)));
		assertEquals(1, lines.size());
		assertTrue(lines.get(0).isClosed());
		lines.get(0).flattened(0.01).forEach(p -> assertEquals(1, p.distance(new Point(5, 5)), 0.05));
	}

	@Test
	void nothingIsDrawnOfNothing() {
		assertEquals(List.of(), lines(Region.EMPTY));
	}

	@Test
	void sameShapeGivesTheSameLines() {
		Region shape = union(bar(-10, -4, 10, 4, 2.5), bar(-6, 9, 6, -9, 2.5));
		assertEquals(lines(shape), lines(shape));
	}

	@Test
	void linesStayInsideTheShape() {
		List<Contour> bars = new ArrayList<>();
		Random random = new Random(3);
		for (int i = 0; i < 7; i++) {
			Point a = Shapes.point(random, 40);
			Point b = Shapes.point(random, 40);
			bars.add(bar(a.x(), a.y(), b.x(), b.y(), 2));
		}
		Region shape = union(bars.toArray(Contour[]::new));
		Region larger = Offset.of(shape, 0.05, Corners.ROUND,
				Holes.KEEP, TOLERANCE, Monitor.NONE);
		Geometry area = Polygons.of(larger, 0.001);
		for (Contour line : lines(shape)) {
			for (Point p : line.flattened(0.01)) {
				assertTrue(area.covers(Polygons.factory()
						.createPoint(new Coordinate(p.x(), p.y()))), "at " + p);
			}
		}
	}

	@Test
	void mirroredShapeHasMirroredLines() {
		Region shape = union(bar(-8, 0, 8, 0, 3), bar(0, 0, 3, 15, 3));
		double length = lines(shape).stream().mapToDouble(Contour::length).sum();
		double mirrored = lines(shape.transformed(new Transform(-1, 0, 0, 1, 0, 0))).stream()
				.mapToDouble(Contour::length).sum();
		assertEquals(length, mirrored, 0.2);
	}
}
