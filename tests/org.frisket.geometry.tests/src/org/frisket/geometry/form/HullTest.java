package org.frisket.geometry.form;

import static org.frisket.geometry.form.Regions.TOLERANCE;
import static org.frisket.geometry.form.Regions.assertLike;
import static org.frisket.geometry.form.Regions.assertWithin;
import static org.frisket.geometry.form.Regions.polygons;
import static org.frisket.geometry.form.Regions.random;
import static org.frisket.geometry.form.Regions.region;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.clean.RegionAssert;
import org.junit.jupiter.api.Test;

class HullTest {

	@Test
	void convexHullsOfKnownShapes() {
		Region l = region("M0 0V10H10V7H3V0Z");
		assertEquals(100 - 7 * 7 / 2.0, ConvexHull.of(l, TOLERANCE, Monitor.NONE).area(), 1e-9);
		Region discs = region(Shapes.circle(0, 0, 5), Shapes.circle(30, 0, 5));
		Region stadium = ConvexHull.of(discs, TOLERANCE, Monitor.NONE);
		assertEquals(300 + Math.PI * 25, stadium.area(), TOLERANCE.mm() * stadium.perimeter());
		long curves = stadium.contours().get(0).segments().stream().filter(Cubic.class::isInstance).count();
		assertTrue(curves <= 6, curves + " curves");
		Region disc = region(Shapes.circle(3, 4, 5));
		assertEquals(disc, ConvexHull.of(disc, TOLERANCE, Monitor.NONE));
		assertTrue(ConvexHull.of(Region.EMPTY, TOLERANCE, Monitor.NONE).isEmpty());
	}

	/** JTS's convex hull of finely flattened curves. */
	@Test
	void convexHullsOfRandomShapesAreThoseOfTheirPoints() {
		Random random = new Random(101);
		for (int i = 0; i < 150; i++) {
			Region region = random(random);
			Region hull = ConvexHull.of(region, TOLERANCE, Monitor.NONE);
			assertLike(polygons(region).convexHull(), hull, "number " + i);
			assertWithin(region, hull, "number " + i);
		}
	}

	@Test
	void hollowHullBridgesOnlyWhatItReaches() {
		// a U with a mouth of 6 mm
		Region u = region("M0 0V20H12V0H9V17H3V0Z");
		// its two inner corners are bridged by chords of 5 mm at most, which cut off 25 / 4
		double open = HollowHull.of(u, 5, TOLERANCE, Monitor.NONE).area() - u.area();
		assertTrue(open > 0 && open < 2 * 25 / 4.0 + 0.1, "filled " + open);
		assertEquals(12 * 20, HollowHull.of(u, 6.5, TOLERANCE, Monitor.NONE).area(), 0.5);
		Region apart = region(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(14, 0, 10, 10));
		assertEquals(2, HollowHull.of(apart, 3, TOLERANCE, Monitor.NONE).pieces().size());
		assertEquals(240, HollowHull.of(apart, 6, TOLERANCE, Monitor.NONE).area(), 0.5);
		Region ring = region(Shapes.rectangle(0, 0, 10, 10), Shapes.rectangle(2, 2, 6, 6).reversed());
		assertEquals(100, HollowHull.of(ring, 0, TOLERANCE, Monitor.NONE).area(), 1e-6);
		assertThrows(IllegalArgumentException.class, () -> HollowHull.of(u, -1, TOLERANCE, Monitor.NONE));
	}

	@Test
	void hollowHullsLieBetweenTheRegionAndItsConvexHull() {
		Random random = new Random(103);
		for (int i = 0; i < 60; i++) {
			Region region = random(random);
			Region convex = ConvexHull.of(region, TOLERANCE, Monitor.NONE);
			double before = 0;
			for (double reach : new double[] { 1, 4, 12, 100 }) {
				Region hull = HollowHull.of(region, reach, TOLERANCE, Monitor.NONE);
				String name = "number " + i + " reaching " + reach;
				RegionAssert.assertClean(hull, TOLERANCE.mm(), name);
				assertWithin(region, hull, name);
				assertWithin(hull, convex, name);
				assertTrue(hull.area() >= before - TOLERANCE.mm() * hull.perimeter(), name + " shrank");
				before = hull.area();
			}
			assertEquals(convex.area(), before, 2 * TOLERANCE.mm() * convex.perimeter(), "number " + i);
		}
	}
}
