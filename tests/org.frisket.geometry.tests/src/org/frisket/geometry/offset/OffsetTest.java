package org.frisket.geometry.offset;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.fit.Samples;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

class OffsetTest {

	private static final Tolerance FINE = new Tolerance(0.001);

	private static Region offset(Region region, double distance, Corners corners) {
		return Offset.of(region, distance, corners, Holes.KEEP, FINE, Monitor.NONE);
	}

	/** Both within the tolerance times the length of the boundary, and of its turn. */
	private static void assertMeasures(double area, double perimeter, Region region) {
		assertEquals(area, region.area(), FINE.mm() * perimeter);
		assertEquals(perimeter, region.perimeter(), FINE.mm() * 2 * Math.PI);
		assertSound(region);
	}

	private static void assertSound(Region region) {
		Geometry flattened = Polygons.of(region, FINE.mm() / 100);
		assertTrue(flattened.isValid());
		region.pieces().forEach(p -> {
			assertTrue(p.outer().signedArea() < 0);
			p.holes().forEach(h -> assertTrue(h.signedArea() > 0));
		});
	}

	/** Steiner 1840: A + P r + pi r^2 and P + 2 pi r. */
	@Test
	void roundOutsetOfConvexShapesFollowsSteiner() {
		assertMeasures(8.141593, 10.283185, offset(Samples.rectangle(0, 0, 1, 1), 1, Corners.ROUND));
		assertMeasures(1.431416, 4.628319, offset(Samples.rectangle(0, 0, 1, 1), 0.1, Corners.ROUND));
		assertMeasures(5928.274334, 318.849556, offset(Samples.rectangle(0, 0, 100, 50), 3, Corners.ROUND));
		assertMeasures(115.867641, 42.566371, offset(Samples.regular(3, 10 / Math.sqrt(3)), 2, Corners.ROUND));
		assertMeasures(6.383474, 9.141593, offset(Samples.regular(6, 1), 0.5, Corners.ROUND));
		assertMeasures(3.166827, 6.570796,
				offset(Samples.regular(5, 0.5 / Math.sin(Math.PI / 5)), 0.25, Corners.ROUND));
		assertMeasures(16 * Math.PI, 8 * Math.PI, offset(Samples.region(Samples.circle(0, 0, 3)), 1, Corners.ROUND));
	}

	@Test
	void roundOutsetOfSquareKeepsFourExactLinesAndOneCubicPerCorner() {
		Region result = offset(Samples.rectangle(0, 0, 1, 1), 0.1, Corners.ROUND);
		assertEquals(8, result.nodeCount());
		assertEquals(4, Samples.segments(result).stream().filter(s -> s instanceof Line && s.length() == 1).count());
	}

	/** Convex polygon with exterior angles phi: A + P r + r^2 sum tan(phi/2), or + r^2/2 sum sin(phi). */
	@Test
	void mitreAndBevelFollowTheirFormulas() {
		Region square = Samples.rectangle(0, 0, 1, 1);
		assertEquals(1.44, offset(square, 0.1, Corners.MITRE).area(), 1e-9);
		assertEquals(1.42, offset(square, 0.1, Corners.BEVEL).area(), 1e-9);
		assertEquals(4, offset(square, 0.1, Corners.MITRE).nodeCount());
		assertEquals(8, offset(square, 0.1, Corners.BEVEL).nodeCount());
		assertEquals(124.085880, offset(Samples.regular(3, 10 / Math.sqrt(3)), 2, Corners.MITRE).area(), 1e-5);
	}

	@Test
	void mitreReachesOneOverSineOfHalfTheAngleAndBeyondTheLimitIsBevelled() {
		assertTipAt(90, 4, 1.414214);
		assertTipAt(60, 4, 2);
		assertTipAt(36, 4, 3.236068);
		assertTipAt(28.96, 4, 1 / Math.sin(Math.toRadians(28.96 / 2)));
		assertTipAt(28.95, 4, Math.sin(Math.toRadians(28.95 / 2)));
		assertTipAt(36, 3.2, Math.sin(Math.toRadians(18)));
		assertTipAt(36, 3.24, 3.236068);
		assertTipAt(90, 1.4, Math.sin(Math.PI / 4));
	}

	/** A thin triangle pointing along x with its tip at the origin; the tip of its offset by 1 lies at -ratio. */
	private static void assertTipAt(double degrees, double limit, double ratio) {
		double half = Math.toRadians(degrees) / 2;
		Region wedge = Samples.polygon(0, 0, 20 * Math.cos(half), 20 * Math.sin(half), 20 * Math.cos(half),
				-20 * Math.sin(half));
		assertEquals(-ratio, offset(wedge, 1, new Corners.Mitre(limit)).bounds().minX(), 1e-6, degrees + " degrees");
	}

	/** The notches of a star are what an inset pulls open. */
	@Test
	void insetMitresTheNotchesOfAStar() {
		double inner = 0.381966 * 10;
		double[] star = new double[20];
		for (int i = 0; i < 10; i++) {
			double r = i % 2 == 0 ? 10 : inner;
			star[2 * i] = r * Math.cos(Math.PI * i / 5);
			star[2 * i + 1] = r * Math.sin(Math.PI * i / 5);
		}
		Region result = offset(Samples.polygon(star), -0.2, Corners.MITRE);
		assertEquals(10, result.nodeCount());
		// an inset with all corners mitred is the star itself, smaller: its edges' distance from the centre shrinks
		double edgeDistance = 10 * Math.cos(Math.toRadians(72));
		double scale = (edgeDistance - 0.2) / edgeDistance;
		assertEquals(112.2570 * scale * scale, result.area(), 1e-3);
	}

	@Test
	void mitreAndBevelLeaveSmoothCurvesRound() {
		Region disc = Samples.region(Samples.circle(0, 0, 0.2));
		for (Corners corners : new Corners[] { Corners.ROUND, Corners.MITRE, Corners.BEVEL }) {
			assertMeasures(Math.PI * 3.2 * 3.2, 2 * Math.PI * 3.2, offset(disc, 3, corners));
		}
	}

	/** A half disc's corners, between an arc and a line, get exact mitres although the arc was flattened. */
	@Test
	void mitreBetweenCurveAndLineIsSharp() {
		Region half = new Region(List.of(halfDisc(2)));
		Region result = offset(half, 1, Corners.MITRE);
		assertEquals(-3, result.bounds().minX(), 0.001);
		assertEquals(3, result.bounds().maxX(), 0.001);
		assertEquals(1, result.bounds().maxY(), 0.001);
		// half disc of radius 3, below it a strip of height 1 that ends in two square corners
		assertEquals(Math.PI * 9 / 2 + 6, result.area(), 0.02);
		assertTrue(result.contours().get(0).segments().stream()
				.anyMatch(s -> s.start().distance(new Point(3, 1)) < 0.002));
	}

	private static Piece halfDisc(double radius) {
		List<Segment> whole = Samples.region(Samples.circle(0, 0, radius)).contours().get(0).segments();
		List<Segment> upper = new ArrayList<>();
		for (Segment segment : whole) {
			if (segment.at(0.5).y() < 0) {
				upper.add(segment);
			}
		}
		// the sixteen arcs start at (radius, 0), so the upper eight follow each other
		upper.set(0, upper.get(0).withEnds(new Point(radius, 0), upper.get(0).end()));
		int last = upper.size() - 1;
		upper.set(last, upper.get(last).withEnds(upper.get(last).start(), new Point(-radius, 0)));
		upper.add(new Line(new Point(-radius, 0), new Point(radius, 0)));
		return new Piece(Contour.closed(upper), List.of());
	}

	/** A - P r + r^2 sum cot(theta/2), P - 2 r sum cot(theta/2). */
	@Test
	void insetFollowsItsFormula() {
		Region square = offset(Samples.rectangle(0, 0, 1, 1), -0.1, Corners.ROUND);
		assertEquals(0.64, square.area(), 1e-9);
		assertEquals(3.2, square.perimeter(), 1e-9);
		Region triangle = offset(Samples.regular(3, 10 / Math.sqrt(3)), -1, Corners.ROUND);
		assertEquals(18.497423, triangle.area(), 1e-6);
		assertEquals(19.607695, triangle.perimeter(), 1e-6);
	}

	@Test
	void insetBeyondTheInradiusLeavesNothing() {
		assertTrue(offset(Samples.regular(3, 10 / Math.sqrt(3)), -2.89, Corners.ROUND).isEmpty());
		assertFalse(offset(Samples.regular(3, 10 / Math.sqrt(3)), -2.88, Corners.ROUND).isEmpty());
		assertTrue(Offset.of(Region.EMPTY, 1, Corners.ROUND, Holes.KEEP, FINE, Monitor.NONE).isEmpty());
	}

	/** L of 2 x 2 less 1 x 1: A = 3 + 8 r + r^2 (5 pi / 4 - 1), P = 8 + (5 pi / 2 - 2) r. */
	@Test
	void reflexCornerStaysSharp() {
		Region result = offset(Samples.polygon(0, 0, 2, 0, 2, 1, 1, 1, 1, 2, 0, 2), 0.1, Corners.ROUND);
		assertMeasures(3.829270, 8.585398, result);
		assertTrue(Samples.segments(result).stream().anyMatch(s -> s.start().distance(new Point(1.1, 1.1)) < 1e-9));
	}

	@Test
	void partsMergeOnceTwiceTheDistanceExceedsTheGap() {
		Region squares = Samples.both(Samples.rectangle(0, 0, 1, 1), Samples.rectangle(1.2, 0, 1, 1));
		Region merged = offset(squares, 0.2, Corners.ROUND);
		assertEquals(1, merged.pieces().size());
		assertEquals(3.602193, merged.area(), 2e-3);
		assertSound(merged);
		assertEquals(2, offset(squares, 0.0995, Corners.ROUND).pieces().size());
		assertEquals(1, offset(squares, 0.1005, Corners.ROUND).pieces().size());
	}

	@Test
	void holeClosesOnceTheDistanceReachesItsInradius() {
		Region frame = Samples.region(Samples.rectangle(0, 0, 20, 20).contours().get(0),
				Samples.circle(10, 10, 3));
		Region open = offset(frame, 2.99, Corners.ROUND);
		assertEquals(1, open.pieces().get(0).holes().size());
		assertEquals(Math.PI * 0.01 * 0.01, Math.abs(open.pieces().get(0).holes().get(0).signedArea()), 1e-4);
		assertEquals(0, offset(frame, 3, Corners.ROUND).pieces().get(0).holes().size());
	}

	@Test
	void filledOffsetHasNoHolesNorWhatLayInThem() {
		Region ring = Samples.region(Samples.circle(0, 0, 10), Samples.circle(0, 0, 8));
		Region withIsland = Samples.both(ring, Samples.region(Samples.circle(0, 0, 2)));
		for (double distance : new double[] { -0.5, 0, 0.5 }) {
			Region filled = Offset.of(withIsland, distance, Corners.ROUND, Holes.FILL, FINE, Monitor.NONE);
			assertEquals(1, filled.pieces().size());
			assertMeasures(Math.PI * (10 + distance) * (10 + distance), 2 * Math.PI * (10 + distance), filled);
		}
		assertEquals(2, offset(withIsland, 0.5, Corners.ROUND).pieces().size());
	}

	@Test
	void openingRoundsConvexCornersAndClosingConcaveOnes() {
		Region rectangle = Samples.rectangle(0, 0, 10, 4);
		// a b - (4 - pi) r^2
		assertEquals(39.141593, Offset.opened(rectangle, 1, FINE, Monitor.NONE).area(), 0.02);
		assertEquals(40, Offset.closed(rectangle, 1, FINE, Monitor.NONE).area(), 1e-3);
		Region l = Samples.polygon(0, 0, 20, 0, 20, 10, 10, 10, 10, 20, 0, 20);
		assertEquals(300 + (1 - Math.PI / 4), Offset.closed(l, 1, FINE, Monitor.NONE).area(), 0.05);
		assertEquals(300 - 4 * (1 - Math.PI / 4), Offset.smoothed(l, 1, FINE, Monitor.NONE).area(), 0.08);
	}

	@Test
	void smoothingJoinsPartsAcrossNarrowGaps() {
		Region bars = Samples.both(Samples.rectangle(0, 0, 10, 4), Samples.rectangle(0, 4.5, 10, 4));
		assertEquals(1, Offset.smoothed(bars, 1, FINE, Monitor.NONE).pieces().size());
	}

	@Test
	void cancelStopsTheWork() {
		assertThrows(CancellationException.class, () -> Offset.of(Samples.rectangle(0, 0, 1, 1), 1, Corners.ROUND,
				Holes.KEEP, FINE, () -> true));
	}

	@Test
	void mitreLimitBelowOneIsRefused() {
		assertThrows(IllegalArgumentException.class, () -> new Corners.Mitre(0.99));
	}

	@Test
	void blobsOffsetWithinToleranceOfAFinePolygonBuffer() {
		Random random = new Random(4);
		Tolerance tolerance = new Tolerance(0.02);
		for (int i = 0; i < 40; i++) {
			Region blob = Samples.region(Samples.blob(random, 10), Samples.blob(random, 3));
			double distance = -2 + 6 * random.nextDouble();
			Region result = Offset.of(blob, distance, Corners.ROUND, Holes.KEEP, tolerance, Monitor.NONE);
			BufferParameters parameters = new BufferParameters(200);
			parameters.setSimplifyFactor(1e-6);
			Geometry truth = BufferOp.bufferOp(Polygons.of(blob, 1e-4), distance, parameters);
			Geometry flattened = Polygons.of(result, 1e-4);
			assertTrue(flattened.isValid());
			assertEquals(truth.getArea(), result.area(), tolerance.mm() * truth.getLength());
			assertTrue(Samples.hausdorff(truth, flattened) <= tolerance.mm(), "seed 4, blob " + i);
			assertTrue(Samples.segments(result).stream().allMatch(s -> s.length() >= tolerance.mm()));
			assertTrue(result.nodeCount() * 8 < truth.getNumPoints());
			assertEquals(result, Offset.of(blob, distance, Corners.ROUND, Holes.KEEP, tolerance, Monitor.NONE));
		}
	}

	@Test
	void outsetThenInsetOfConvexShapesGivesThemBack() {
		Random random = new Random(5);
		Tolerance tolerance = new Tolerance(0.01);
		for (int i = 0; i < 20; i++) {
			Region convex = i % 2 == 0 ? Samples.regular(3 + random.nextInt(9), 5 + 20 * random.nextDouble())
					: Samples.region(Samples.ellipse(0, 0, 4 + 10 * random.nextDouble(), 8));
			double distance = 0.3 + 4 * random.nextDouble();
			Region out = Offset.of(convex, distance, Corners.ROUND, Holes.KEEP, tolerance, Monitor.NONE);
			Region back = Offset.of(out, -distance, Corners.ROUND, Holes.KEEP, tolerance, Monitor.NONE);
			// where two straight sides meet, a shift of both by the tolerance moves the corner farther than that
			assertTrue(Samples.hausdorff(Polygons.of(convex, 1e-4), Polygons.of(back, 1e-4)) <= 4 * tolerance.mm(),
					"seed 5, shape " + i);
		}
	}
}
