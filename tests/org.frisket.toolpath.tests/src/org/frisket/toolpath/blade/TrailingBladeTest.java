package org.frisket.toolpath.blade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.frisket.geometry.Point;
import org.frisket.toolpath.track.Arc;
import org.frisket.toolpath.track.Move;
import org.frisket.toolpath.track.Straight;
import org.frisket.toolpath.track.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values derived from the trailing tip's equation, which is that of the tractrix; offset 0.25 mm. */
class TrailingBladeTest {

	private static final double D = 0.25;
	private static final TrailingBlade BLADE = new TrailingBlade(D, 0);

	@Test
	void rightAngle() {
		List<Move> led = BLADE.lead(new Track(polyline(0, 0, 10, 0, 10, 10), false));
		assertEquals(3, led.size());
		assertPoint(0.25, 0, led.get(0).start());
		assertPoint(10.25, 0, led.get(0).end());
		assertPoint(10, 0, ((Arc) led.get(1)).centre());
		assertPoint(10, 0.25, led.get(2).start());
		assertPoint(10, 10.25, led.get(2).end());
		assertEquals(0.392699, led.get(1).length(), 5e-7);
		assertEquals(20.392699, length(led), 5e-7);
	}

	@Test
	void closedPolygons() {
		assertEquals(41.570796, length(BLADE.lead(closed(0, 0, 10, 0, 10, 10, 0, 10))), 5e-7);
		List<Move> triangle = BLADE.lead(closed(0, 0, 20, 0, 10, 10 * Math.sqrt(3)));
		assertEquals(61.570796, length(triangle), 5e-7);
		assertEquals(0.523599, triangle.get(1).length(), 5e-7);
	}

	@Test
	void star() {
		double[] xy = new double[20];
		for (int i = 0; i < 10; i++) {
			double r = i % 2 == 0 ? 10 : 10 * Math.sin(Math.toRadians(18)) / Math.sin(Math.toRadians(54));
			xy[2 * i] = r * Math.cos(Math.toRadians(36 * i));
			xy[2 * i + 1] = r * Math.sin(Math.toRadians(36 * i));
		}
		Track star = closed(xy);
		assertEquals(4.712389, length(BLADE.lead(star)) - star.length(), 5e-7);
	}

	@ParameterizedTest
	@CsvSource({ "10, 10.003125, 1.4321", "2, 2.015564, 7.1250", "1, 1.030776, 14.0362", "0.5, 0.559017, 26.5651" })
	void circles(double radius, double led, double lead) {
		Arc arc = (Arc) BLADE.lead(new Track(List.of(new Arc(new Point(3, 4), radius, 0.3, 2 * Math.PI)), true)).get(0);
		assertEquals(led, arc.radius(), 5e-7);
		assertEquals(lead, Math.toDegrees(arc.from() - 0.3), 5e-5);
	}

	@ParameterizedTest
	@CsvSource({ "10, 9.996875", "2, 1.984313", "1, 0.968246", "0.5, 0.433013" })
	void circlesUncompensatedComeOutSmall(double radius, double tip) {
		List<Move> round = List.of(new Arc(new Point(0, 0), radius, 0, 8 * Math.PI));
		List<Point> cut = TipPath.of(round, D, Math.PI / 2, 1e-3);
		Point last = cut.get(cut.size() - 1);
		assertEquals(tip, Math.hypot(last.x(), last.y()), 2e-6);
	}

	@ParameterizedTest
	@CsvSource({ "0.25, -0.162014, 0.059601", "0.5, -0.066451, 0.258993", "1.0, -0.009155, 0.750168" })
	void afterARightAngleUncompensated(double s, double x, double y) {
		List<Point> cut = TipPath.of(List.of(new Straight(new Point(0, 0), new Point(0, s))), D, 0, 10);
		assertPoint(x, y, cut.get(cut.size() - 1), 5e-7);
	}

	@ParameterizedTest
	@CsvSource({ "30, 0.048821", "60, 0.101956", "90, 0.165686", "120, 0.252919", "150, 0.404311" })
	void missesTheCorner(double degrees, double by) {
		double a = Math.toRadians(degrees);
		List<Point> cut = TipPath.of(polyline(0, 0, 3 * Math.cos(a), 3 * Math.sin(a)), D, 0, 1e-4);
		double[] distance = cut.stream().mapToDouble(p -> Math.hypot(p.x(), p.y())).toArray();
		// past a right angle the tip first goes away from the corner, where it was at a distance of d
		double least = IntStream.range(1, distance.length - 1)
				.filter(i -> distance[i] < distance[i - 1] && distance[i] <= distance[i + 1])
				.mapToDouble(i -> distance[i]).min().orElseThrow();
		assertEquals(by, least, 2e-6);
	}

	/** Between the rounded cut and the corner: π d² / 4. */
	@Test
	void areaLeftAtACorner() {
		List<Point> cut = TipPath.of(polyline(-5, 0, 0, 0, 0, 6), D, 0, 1e-4);
		double sum = 0;
		List<Point> ring = new ArrayList<>(cut);
		ring.add(new Point(0, 0));
		for (int i = 0; i < ring.size(); i++) {
			Point p = ring.get(i);
			Point q = ring.get((i + 1) % ring.size());
			sum += p.x() * q.y() - q.x() * p.y();
		}
		assertEquals(0.0490874, Math.abs(sum / 2), 1e-6);
	}

	/** How far the axis runs until the tip is in line to within a degree. */
	@ParameterizedTest
	@CsvSource({ "45, 0.964994", "90, 1.185337", "135, 1.405681" })
	void lagsBehind(double degrees, double way) {
		List<Point> cut = TipPath.of(polyline(0, 0, way, 0), D, Math.toRadians(degrees), 10);
		Point last = cut.get(cut.size() - 1);
		assertEquals(1, Math.toDegrees(Math.asin(-last.y() / D)), 1e-4);
	}

	@ParameterizedTest
	@CsvSource({ "5, 0.021789", "10, 0.043412", "15, 0.064705", "30, 0.125" })
	void aCornerNotSwungRound(double degrees, double off) {
		double a = Math.toRadians(degrees);
		TrailingBlade lazy = new TrailingBlade(D, Math.toRadians(31));
		List<Move> led = lazy.lead(new Track(polyline(-5, 0, 0, 0, 5 * Math.cos(a), 5 * Math.sin(a)), false));
		assertTrue(led.stream().allMatch(Straight.class::isInstance));
		assertEquals(off, D * Math.sin(a), 5e-7);
		double worst = TipPath.of(led, D, 0, 1e-3).stream().mapToDouble(p -> distance(p, a)).max().orElseThrow();
		assertTrue(worst <= off + 1e-6, "off by " + worst);
	}

	private static double distance(Point p, double a) {
		double t = p.x() * Math.cos(a) + p.y() * Math.sin(a);
		double after = t >= 0 ? Math.hypot(p.x() - t * Math.cos(a), p.y() - t * Math.sin(a)) : Double.POSITIVE_INFINITY;
		double before = p.x() <= 0 ? Math.abs(p.y()) : Double.POSITIVE_INFINITY;
		return Math.min(Math.min(after, before), Math.hypot(p.x(), p.y()));
	}

	/** A round corner of 1 mm. */
	@Test
	void aRoundCornerNeedsNoSwing() {
		Track track = new Track(List.of(new Straight(new Point(0, 0), new Point(9, 0)),
				new Arc(new Point(9, 1), 1, -Math.PI / 2, Math.PI / 2), new Straight(new Point(10, 1), new Point(10, 10))),
				false);
		List<Move> led = BLADE.lead(track);
		double arcs = led.stream().filter(Arc.class::isInstance).mapToDouble(Move::length).sum();
		assertEquals(1.619140, arcs, 5e-7);
		assertEquals(1, led.stream().filter(Arc.class::isInstance).count());
	}

	/** The tip of a led axis cuts the drawing. */
	@Test
	void whatIsLedIsCut() {
		Track square = closed(0, 0, 10, 0, 10, 10, 0, 10);
		List<Point> cut = TipPath.of(BLADE.lead(square), D, 0, 0.002);
		for (Point p : cut) {
			double inside = Math.min(Math.min(p.x(), 10 - p.x()), Math.min(p.y(), 10 - p.y()));
			assertEquals(0, inside, 2e-3);
		}
		assertTrue(cut.size() > 1000);
	}

	private static Track closed(double... xy) {
		double[] round = IntStream.range(0, xy.length + 2).mapToDouble(i -> xy[i % xy.length]).toArray();
		return new Track(polyline(round), true);
	}

	private static List<Move> polyline(double... xy) {
		List<Move> moves = new ArrayList<>();
		for (int i = 2; i < xy.length; i += 2) {
			moves.add(new Straight(new Point(xy[i - 2], xy[i - 1]), new Point(xy[i], xy[i + 1])));
		}
		return moves;
	}

	private static double length(List<Move> moves) {
		return moves.stream().mapToDouble(Move::length).sum();
	}

	private static void assertPoint(double x, double y, Point p) {
		assertPoint(x, y, p, 1e-12);
	}

	private static void assertPoint(double x, double y, Point p, double by) {
		assertEquals(x, p.x(), by);
		assertEquals(y, p.y(), by);
	}
}
