package org.frisket.geometry.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class CurveFitterTest {

	private static final Tolerance TOLERANCE = new Tolerance(0.01);

	private final CurveFitter fitter = new CurveFitter(TOLERANCE);

	private static List<Point> sampled(Segment segment, int steps) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i <= steps; i++) {
			points.add(segment.at((double) i / steps));
		}
		return points;
	}

	private static Geometry lineString(List<Point> points) {
		return Polygons.factory().createLineString(
				points.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
	}

	private static double deviation(List<Point> points, List<Segment> segments) {
		return Samples.hausdorff(lineString(points), lineString(Contour.open(segments).flattened(1e-5)));
	}

	private static double largestKink(Contour contour) {
		double largest = 0;
		List<Segment> segments = contour.segments();
		for (int i = 0; i < segments.size(); i++) {
			Point arriving = segments.get((i + segments.size() - 1) % segments.size()).endTangent();
			Point leaving = segments.get(i).startTangent();
			largest = Math.max(largest, Math.abs(Math.atan2(arriving.cross(leaving), arriving.dot(leaving))));
		}
		return largest;
	}

	@Test
	void pointsOfOneCubicComeBackAsThatCubic() {
		Cubic source = new Cubic(new Point(0, 0), new Point(10, 30), new Point(60, 40), new Point(80, 0));
		List<Segment> fitted = fitter.fitRun(sampled(source, 400), source.startTangent(), source.endTangent());
		assertEquals(1, fitted.size());
		Cubic cubic = (Cubic) fitted.get(0);
		assertEquals(0, cubic.control1().distance(source.control1()), 0.02);
		assertEquals(0, cubic.control2().distance(source.control2()), 0.02);
	}

	@Test
	void unknownEndTangentsAreFound() {
		Cubic source = new Cubic(new Point(0, 0), new Point(10, 30), new Point(60, 40), new Point(80, 0));
		List<Segment> fitted = fitter.fitRun(sampled(source, 400));
		assertEquals(1, fitted.size());
		assertEquals(0, fitted.get(0).startTangent().distance(source.startTangent()), 0.01);
	}

	@Test
	void straightRunIsOneLineHoweverManyPointsItHas() {
		Line source = new Line(new Point(3, 4), new Point(-7, 19));
		assertEquals(List.of(source), fitter.fitRun(sampled(source, 1000)));
	}

	@Test
	void polygonComesBackCornerByCorner() {
		List<Point> corners = List.of(new Point(0, 0), new Point(10, 0), new Point(12, 5), new Point(12, 5.5),
				new Point(3, 9));
		List<Point> dense = new ArrayList<>();
		for (Segment side : Contour.polygon(corners).segments()) {
			List<Point> points = sampled(side, 50);
			dense.addAll(points.subList(0, points.size() - 1));
		}
		assertEquals(Contour.polygon(corners), fitter.fitRing(dense));
	}

	@Test
	void ringMayStartAnywhereOnASide() {
		List<Point> corners = List.of(new Point(0, 0), new Point(10, 0), new Point(10, 5), new Point(0, 5));
		List<Point> startingOnSide = List.of(new Point(4, 0), new Point(10, 0), new Point(10, 5), new Point(0, 5),
				new Point(0, 0));
		assertEquals(Contour.polygon(corners), fitter.fitRing(startingOnSide));
	}

	@Test
	void circleNeedsFourSmoothCubics() {
		// four cubics are off a circle by 2.7e-4 of its radius (textbook), three by 1.5e-3
		Contour fitted = fitter.fitRing(Samples.circle(0, 0, 20).flattened(1e-4));
		assertEquals(4, fitted.segments().size());
		assertTrue(largestKink(fitted) < 1e-9);
		assertEquals(400 * Math.PI, Math.abs(fitted.signedArea()), 0.2);
	}

	@Test
	void roundedRectangleKeepsItsSidesAndJoinsThemSmoothly() {
		Geometry rounded = Polygons.of(Samples.rectangle(0, 0, 30, 20), 1).buffer(2, 60);
		List<Point> dense = Polygons.toRegion(rounded).contours().get(0).segments().stream().map(Segment::start)
				.toList();
		Contour fitted = fitter.fitRing(dense);
		assertEquals(8, fitted.segments().size());
		assertEquals(100, fitted.segments().stream().filter(s -> s instanceof Line).mapToDouble(Segment::length).sum(),
				1e-9);
		assertTrue(largestKink(fitted) < 1e-9);
	}

	@Test
	void cornerBetweenCurvesStaysAtItsPlace() {
		// two arcs that meet in a point at an angle: a lens
		Contour lens = Contour.closed(List.of(
				new Cubic(new Point(0, 0), new Point(3, -4), new Point(9, -4), new Point(12, 0)),
				new Cubic(new Point(12, 0), new Point(9, 4), new Point(3, 4), new Point(0, 0))));
		Contour fitted = fitter.fitRing(lens.flattened(0.001));
		assertEquals(2, fitted.segments().size());
		assertTrue(fitted.segments().stream().anyMatch(s -> s.start().equals(new Point(0, 0))));
		assertTrue(fitted.segments().stream().anyMatch(s -> s.start().equals(new Point(12, 0))));
	}

	@Test
	void cornerAngleDecidesWhatIsSmooth() {
		List<Point> bent = List.of(new Point(0, 0), new Point(5, 0), new Point(10, 0.6));
		assertEquals(2, fitter.fitRun(bent).size());
		Point corner = fitter.fitRun(bent).get(0).end();
		assertEquals(new Point(5, 0), corner);
	}

	@Test
	void runWithoutExtentIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> fitter.fitRun(List.of(Point.ORIGIN, Point.ORIGIN)));
	}

	/**
	 * A cubic that also matches the enclosed area converges with the sixth order of the length (Levien, kurbo): halves
	 * show about a 64th of the error of the whole.
	 */
	@Test
	void halvingASmoothPieceShrinksTheErrorSixtyfold() {
		double whole = errorOfOneCubic(0, 0.8);
		double half = errorOfOneCubic(0, 0.4);
		assertTrue(whole / half > 45 && whole / half < 90, "ratio " + whole / half);
	}

	/** Along a spiral, whose curvature changes; the tangents are given. */
	private static double errorOfOneCubic(double from, double to) {
		List<Point> points = new ArrayList<>();
		for (int i = 0; i <= 2000; i++) {
			points.add(spiral(from + (to - from) * i / 2000));
		}
		Chain chain = new Chain(points);
		return new CubicFit(chain, 1e-6).fit(0, chain.last(), spiralTangent(from), spiralTangent(to));
	}

	private static Point spiral(double angle) {
		return new Point(Math.cos(angle), Math.sin(angle)).times(100 * Math.exp(0.3 * angle));
	}

	private static Point spiralTangent(double angle) {
		return new Point(0.3 * Math.cos(angle) - Math.sin(angle), 0.3 * Math.sin(angle) + Math.cos(angle)).unit();
	}

	@Test
	void randomCurvesAreFollowedBothWaysWithFewSegments() {
		Random random = new Random(1);
		int dense = 0;
		int segments = 0;
		int source = 0;
		for (int i = 0; i < 60; i++) {
			Contour blob = Samples.blob(random, 5 + 20 * random.nextDouble());
			List<Point> points = blob.flattened(0.001);
			Contour fitted = fitter.fitRing(points);
			assertTrue(Samples.hausdorff(Polygons.ring(Contour.polygon(points), 1),
					Polygons.ring(fitted, 1e-5)) <= TOLERANCE.mm(), "seed 1, blob " + i);
			assertTrue(largestKink(fitted) < 1e-9, "seed 1, blob " + i);
			dense += points.size();
			segments += fitted.segments().size();
			source += blob.segments().size();
		}
		assertTrue(segments * 12 < dense, segments + " segments for " + dense + " points");
		// the best a fitter with plain tangents managed on lettering at this tolerance was 0.9 to 1.4
		assertTrue(segments < 2.6 * source, segments + " segments for a source of " + source);
	}

	@Test
	void randomOpenRunsWithCuspsAndLoopsAreFollowed() {
		Random random = new Random(2);
		for (int i = 0; i < 200; i++) {
			Point[] p = new Point[4];
			for (int k = 0; k < 4; k++) {
				p[k] = new Point(20 * random.nextDouble(), 20 * random.nextDouble());
			}
			Cubic wild = new Cubic(p[0], p[1], p[2], p[3]);
			List<Point> points = new ArrayList<>();
			points.add(wild.start());
			wild.flatten(0.001, t -> points.add(wild.at(t)));
			List<Segment> fitted = fitter.fitRun(points);
			assertEquals(wild.start(), fitted.get(0).start());
			assertEquals(wild.end(), fitted.get(fitted.size() - 1).end());
			assertTrue(deviation(points, fitted) <= TOLERANCE.mm(), "seed 2, curve " + i + " " + wild);
			assertTrue(fitted.size() <= 8, "seed 2, curve " + i + " " + fitted.size());
		}
	}
}
