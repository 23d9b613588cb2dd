package org.frisket.geometry.stencil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

class StencilTest {

	private static Region region(Contour... contours) {
		return new OutlineCleaner().clean(Outline.of(contours), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
	}

	private static Stencil stencil(Region region, double width, Choice... choices) {
		return Stencil.of(region, width, List.of(choices), Tolerance.DEFAULT, Monitor.NONE);
	}

	/** What is left of a sheet around, by JTS alone: one part if nothing falls out. */
	private static int partsOfTheSheet(Region openings) {
		Envelope around = Polygons.of(openings, 0.01).getEnvelopeInternal();
		around.expandBy(10);
		Geometry sheet = Polygons.factory().toGeometry(around);
		return sheet.difference(Polygons.of(openings, 0.01)).getNumGeometries();
	}

	private static Region ring() {
		return region(Shapes.circle(0, 0, 10), Shapes.circle(0, 0, 6).reversed());
	}

	@Test
	void ringIsHeldByTwoUprightBridges() {
		Stencil stencil = stencil(ring(), 2);
		assertEquals(2, stencil.bridges().size());
		for (Bridge bridge : stencil.bridges()) {
			assertEquals(4, bridge.length(), 0.02);
			assertEquals(0, bridge.inner().x(), 0.05);
			assertEquals(0, bridge.outer().x(), 0.05);
		}
		assertEquals(0, stencil.bridges().get(0).inner().plus(stencil.bridges().get(1).inner()).length(), 0.05);
		assertEquals(1, partsOfTheSheet(stencil.region()));
		assertEquals(2, stencil.region().pieces().size());
	}

	@Test
	void bridgesTakeTheirOwnAreaOnly() {
		Stencil stencil = stencil(ring(), 2);
		// a strip of width w across a ring of radii r and R takes the integral of its chord from -w/2 to w/2
		double taken = 2 * (segment(10, 1) - segment(6, 1));
		assertEquals(Math.PI * (100 - 36) - taken, stencil.region().area(), 0.1);
	}

	/** Area under the arc of a circle above its diameter between -h and h. */
	private static double segment(double radius, double h) {
		return h * Math.sqrt(radius * radius - h * h) + radius * radius * Math.asin(h / radius);
	}

	@Test
	void thickSidesAreBridgedRatherThanThinTopAndBottom() {
		Contour counter = Shapes.circle(0, 0, 1).transformed(Transform.scaling(5, 9)).reversed();
		Stencil stencil = stencil(region(Shapes.circle(0, 0, 10), counter), 1);
		assertEquals(2, stencil.bridges().size());
		stencil.bridges().forEach(bridge -> assertEquals(0, bridge.inner().y(), 0.05));
	}

	@Test
	void bothCountersOfAnEightAreHeld() {
		Region eight = region(Shapes.rectangle(0, 0, 20, 36), Shapes.rectangle(4, 4, 12, 12).reversed(),
				Shapes.rectangle(4, 20, 12, 12).reversed());
		Stencil stencil = stencil(eight, 2);
		assertEquals(1, partsOfTheSheet(stencil.region()));
	}

	@Test
	void islandWithAnOpeningInItIsHeld() {
		Region target = region(Shapes.circle(0, 0, 20), Shapes.circle(0, 0, 15).reversed(), Shapes.circle(0, 0, 8),
				Shapes.circle(0, 0, 4).reversed());
		Stencil stencil = stencil(target, 2);
		assertEquals(1, partsOfTheSheet(stencil.region()));
		assertEquals(4, stencil.bridges().size());
	}

	@Test
	void openingsWithoutIslandsStayAsTheyAre() {
		Region plain = region(Shapes.rectangle(0, 0, 20, 36), Shapes.circle(50, 0, 5));
		Stencil stencil = stencil(plain, 2);
		assertSame(plain, stencil.region());
		assertTrue(stencil.bridges().isEmpty());
	}

	@Test
	void bridgesStandWhereTheyAreWanted() {
		Stencil stencil = stencil(ring(), 2,
				new Choice(new Point(1, 1), List.of(0.0, Math.toRadians(120), Math.toRadians(240))));
		assertEquals(3, stencil.bridges().size());
		assertEquals(6, stencil.bridges().get(0).inner().x(), 0.02);
		assertEquals(6 * Math.cos(Math.toRadians(120)), stencil.bridges().get(1).inner().x(), 0.02);
		assertEquals(3, stencil.region().pieces().size());
	}

	@Test
	void wishThatHoldsNothingFallsBackToTheRule() {
		assertEquals(2, stencil(ring(), 2, new Choice(Point.ORIGIN, List.of())).bridges().size());
	}

	@Test
	void whateverIsBridgedHoldsTogether() {
		for (int seed = 0; seed < 60; seed++) {
			Random random = new Random(seed);
			Contour[] contours = new Contour[6];
			for (int i = 0; i < contours.length; i++) {
				Point centre = Shapes.point(random, 40);
				double radius = 8 + 10 * random.nextDouble();
				contours[i] = i % 2 == 0 ? Shapes.circle(centre.x(), centre.y(), radius)
						: Shapes.circle(centre.x(), centre.y(), radius / 2).reversed();
			}
			Region openings = region(contours);
			Stencil stencil = stencil(openings, 1.5);
			assertEquals(1, partsOfTheSheet(stencil.region()), "seed " + seed);
			assertTrue(stencil.region().area() <= openings.area() + 1e-6, "seed " + seed);
			assertTrue(Polygons.of(stencil.region(), 0.001).isValid(), "seed " + seed);
			for (Bridge bridge : stencil.bridges()) {
				Point middle = bridge.inner().towards(bridge.outer(), 0.5);
				assertTrue(!Polygons.of(stencil.region(), 0.001).contains(
						Polygons.factory().createPoint(new Coordinate(middle.x(), middle.y()))), "seed " + seed);
			}
		}
	}

	@Test
	void bridgeNeedsAWidth() {
		assertThrows(IllegalArgumentException.class, () -> stencil(ring(), 0));
		assertThrows(IllegalArgumentException.class, () -> stencil(ring(), Double.NaN));
	}
}
