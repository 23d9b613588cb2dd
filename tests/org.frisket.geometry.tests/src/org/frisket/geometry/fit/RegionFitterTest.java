package org.frisket.geometry.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryCollection;

class RegionFitterTest {

	private static final Tolerance COARSE = new Tolerance(0.5);

	@Test
	void contoursCloserThanTheToleranceDoNotTouch() {
		// a film between two circles, far thinner than the tolerance
		Region film = Samples.region(Samples.circle(0, 0, 20), Samples.circle(0.03, 0, 19.96));
		Region fitted = new RegionFitter(COARSE, 1e-4).fit(Polygons.of(film, 1e-4), Monitor.NONE);
		assertEquals(1, fitted.pieces().get(0).holes().size());
		assertTrue(Polygons.of(fitted, 1e-5).isValid());
		assertTrue(ContactFinder.contacts(fitted.contours(), 1e-5, Monitor.NONE).isEmpty());
	}

	@Test
	void pointContactsArePartedByLessThanTheTolerance() {
		Geometry touching = Polygons.of(
				Samples.both(Samples.polygon(0, 0, 10, 0, 5, 5), Samples.polygon(5, 5, 10, 10, 0, 10)), 1);
		assertTrue(touching.isValid());
		Region fitted = new RegionFitter(new Tolerance(0.05), 0.01).fit(touching, Monitor.NONE);
		assertEquals(2, fitted.pieces().size());
		assertTrue(ContactFinder.contacts(fitted.contours(), 1e-5, Monitor.NONE).isEmpty());
		assertTrue(Samples.hausdorff(touching, Polygons.of(fitted, 1e-4)) <= 0.05);
	}

	@Test
	void specksAndTheirHolesAreDropped() {
		Region shape = Samples.region(Samples.circle(0, 0, 20), Samples.circle(0, 0, 0.2));
		Region speck = Samples.region(Samples.circle(30, 0, 0.2));
		Region fitted = new RegionFitter(COARSE, 0.01).fit(Polygons.of(Samples.both(shape, speck), 0.001),
				Monitor.NONE);
		assertEquals(1, fitted.contours().size());
	}

	@Test
	void stepsLeftByPolygonOperationsAreMended() {
		Region stepped = Samples.polygon(0, 0, 5, 0, 5, 0.0005, 10, 0.0005, 10, 8, 0, 8);
		Region fitted = new RegionFitter(new Tolerance(0.02), 0.002).fit(Polygons.of(stepped, 1), Monitor.NONE);
		assertEquals(4, fitted.nodeCount());
	}

	@Test
	void segmentsBelowTheToleranceGoAndTheirNeighboursMeet() {
		Region chamfered = Samples.polygon(0, 0, 9.99, 0, 10, 0.01, 10, 8, 0, 8);
		Region fitted = new RegionFitter(new Tolerance(0.05), 0.002).fit(Polygons.of(chamfered, 1), Monitor.NONE);
		assertEquals(4, fitted.nodeCount());
		assertEquals(80, fitted.area(), 1e-9);
	}

	/** Two parabolas that touch at the origin bound a spike without an angle. */
	@Test
	void sidesOfASpikeStayOnTheirSides() {
		for (double other : new double[] { 0.11, 0.105, 0.12, -0.01 }) {
			List<Point> corners = new ArrayList<>();
			for (int i = 0; i <= 200; i++) {
				double x = 5 - i / 40.0;
				corners.add(new Point(x, 0.1 * x * x));
			}
			for (int i = 1; i <= 200; i++) {
				double x = i / 40.0;
				corners.add(new Point(x, other * x * x));
			}
			Region spike = Samples.region(Contour.polygon(corners));
			Region fitted = new RegionFitter(new Tolerance(0.01), 1e-4).fit(Polygons.of(spike, 1), Monitor.NONE);
			assertTrue(Polygons.of(fitted, 1e-6).isValid(), "other side " + other);
		}
	}

	@Test
	void filmThinnerThanTheToleranceStaysValid() {
		List<Point> corners = new ArrayList<>();
		for (int i = 0; i <= 300; i++) {
			double x = i / 30.0;
			corners.add(new Point(x, Math.sin(x)));
		}
		for (int i = 300; i >= 0; i--) {
			double x = i / 30.0;
			corners.add(new Point(x, Math.sin(x) + 0.004));
		}
		Geometry film = Polygons.of(Samples.region(Contour.polygon(corners)), 1);
		Region fitted = new RegionFitter(new Tolerance(0.05), 0.001).fit(film, Monitor.NONE);
		assertEquals(1, fitted.pieces().size());
		assertTrue(Polygons.of(fitted, 1e-6).isValid());
		assertTrue(Samples.hausdorff(film, Polygons.of(fitted, 1e-4)) <= 0.05);
	}

	@Test
	void emptyAndNonPolygonalGiveTheEmptyRegion() {
		assertEquals(Region.EMPTY, new RegionFitter(COARSE, 0.01)
				.fit(new GeometryCollection(null, Polygons.factory()), Monitor.NONE));
		assertEquals(Region.EMPTY, new RegionFitter(COARSE, 0.01)
				.fit(Samples.rectangleOutline(), Monitor.NONE));
	}

	@Test
	void regionsSurviveFlatteningAndFitting() {
		Random random = new Random(3);
		Tolerance tolerance = new Tolerance(0.02);
		for (int i = 0; i < 40; i++) {
			Contour outer = Samples.blob(random, 15);
			Contour hole = Samples.blob(random, 4);
			Region source = Samples.region(outer, hole);
			Geometry dense = Polygons.of(source, 0.002);
			Region fitted = new RegionFitter(tolerance, 0.002).fit(dense, Monitor.NONE);
			Geometry flattened = Polygons.of(fitted, 1e-4);
			assertTrue(flattened.isValid());
			assertTrue(Samples.hausdorff(dense, flattened) <= tolerance.mm(), "seed 3, region " + i);
			assertEquals(source.area(), fitted.area(), tolerance.mm() * source.perimeter() / 4);
			assertEquals(List.of(1), fitted.pieces().stream().map(p -> p.holes().size()).toList());
			assertTrue(fitted.nodeCount() * 8 < dense.getNumPoints());
		}
	}
}
