package org.frisket.geometry.form;

import static org.frisket.geometry.form.Regions.TOLERANCE;
import static org.frisket.geometry.form.Regions.assertWithin;
import static org.frisket.geometry.form.Regions.random;
import static org.frisket.geometry.form.Regions.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.clean.RegionAssert;
import org.frisket.geometry.offset.Offset;
import org.junit.jupiter.api.Test;

class RoundedCornersTest {

	@Test
	void roundedSquaresLoseFourMinusPiTimesTheSquareOfTheRadius() {
		Region square = region(Shapes.rectangle(2, 3, 10, 10));
		for (double radius : new double[] { 0.5, 2, 4.9, 5 }) {
			Region rounded = RoundedCorners.of(square, radius, TOLERANCE, Monitor.NONE);
			assertEquals(100 - (4 - Math.PI) * radius * radius, rounded.area(), TOLERANCE.mm() * 40, "radius " + radius);
			RegionAssert.assertClean(rounded, TOLERANCE.mm(), "radius " + radius);
		}
		// as large as fits
		assertEquals(25 * Math.PI, RoundedCorners.of(square, 50, TOLERANCE, Monitor.NONE).area(), 0.2);
		assertEquals(square, RoundedCorners.of(square, 0, TOLERANCE, Monitor.NONE));
		Region disc = region(Shapes.circle(0, 0, 5));
		assertEquals(disc, RoundedCorners.of(disc, 2, TOLERANCE, Monitor.NONE));
	}

	@Test
	void innerCornersAreFilledAndOuterOnesCut() {
		// an L has five outer corners and an inner one
		Region l = region("M0 0V20H20V14H6V0Z");
		double spared = (4 - Math.PI) / 4;
		assertEquals(l.area() - 4 * spared * 4, RoundedCorners.of(l, 2, TOLERANCE, Monitor.NONE).area(), 0.1);
		// a hole's corners are inner ones
		Region ring = region(Shapes.rectangle(0, 0, 20, 20), Shapes.rectangle(5, 5, 10, 10).reversed());
		assertEquals(300, RoundedCorners.of(ring, 2, TOLERANCE, Monitor.NONE).area(), 0.1);
	}

	@Test
	void roundedArcsTouchCurvesToo() {
		// half a disc: each corner is between a line and an arc
		Region half = region("M-10 0A10 10 0 0 0 10 0Z");
		Region rounded = RoundedCorners.of(half, 2, TOLERANCE, Monitor.NONE);
		RegionAssert.assertClean(rounded, TOLERANCE.mm(), "half disc");
		for (Contour contour : rounded.contours()) {
			List<Segment> segments = contour.segments();
			for (int i = 0; i < segments.size(); i++) {
				Point in = segments.get(i).endTangent();
				Point out = segments.get((i + 1) % segments.size()).startTangent();
				assertTrue(in.dot(out) > Math.cos(Math.toRadians(1)), "corner left at " + segments.get(i).end());
			}
		}
		// opening with a disc of that size rounds the same corners of a convex shape
		double opened = Offset.opened(half, 2, TOLERANCE, Monitor.NONE).area();
		assertEquals(opened, rounded.area(), TOLERANCE.mm() * rounded.perimeter());
	}

	@Test
	void roundedRandomShapesAreCleanAndHardlyLargerThanTheirClosing() {
		Random random = new Random(109);
		for (int i = 0; i < 150; i++) {
			Region region = random(random);
			double radius = 0.1 + 3 * random.nextDouble();
			Region rounded = RoundedCorners.of(region, radius, TOLERANCE, Monitor.NONE);
			String name = "number " + i;
			RegionAssert.assertClean(rounded, TOLERANCE.mm(), name);
			assertWithin(rounded, Offset.closed(region, radius, TOLERANCE, Monitor.NONE), name);
			assertWithin(Offset.opened(region, radius, TOLERANCE, Monitor.NONE), rounded, name);
		}
	}
}
