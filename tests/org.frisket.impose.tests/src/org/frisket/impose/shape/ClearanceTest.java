package org.frisket.impose.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.impose.Figures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class ClearanceTest {

	@Test
	void rectanglesStayExact() {
		Solid solid = Clearance.of(Figures.rectangle(50, 30), 3);
		assertEquals(53, solid.maxX() - solid.minX(), 1e-9);
		assertEquals(33, solid.maxY() - solid.minY(), 1e-9);
		assertEquals(53 * 33, solid.area(), 1e-6);
	}

	@Test
	void holesThatHoldNothingAreFilled() {
		Region frame = Figures.frame(200, 100, 20);
		assertEquals(200 * 100 - 160 * 60, Clearance.of(frame, 0).area(), 1e-6);
		assertEquals(200 * 100 - 160 * 60, Clearance.of(frame, 0, (w, h) -> w >= 159 && h >= 59).area(), 1e-6);
		assertEquals(200 * 100, Clearance.of(frame, 0, (w, h) -> w >= 161).area(), 1e-6);
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0.5, 2, 6 })
	void neverLessThanHalfTheGap(double gap) {
		SplittableRandom random = new SplittableRandom(7);
		for (int i = 0; i < 60; i++) {
			Region region = Polygons.toRegion(i % 2 == 0 ? Figures.star(random, 5 + random.nextInt(90), 40)
					: Figures.ring(random, 5 + random.nextInt(90), 40));
			Geometry own = Polygons.of(region, 0.001);
			org.frisket.geometry.Point centre = region.bounds().centre();
			Geometry solid = union(Clearance.of(region, gap), centre.x(), centre.y());
			assertTrue(solid.buffer(1e-6).contains(own));
			assertTrue(own.distance(solid.getBoundary()) >= gap / 2 - 1e-6, "gap " + own.distance(solid.getBoundary()));
		}
	}

	/** Whoever lays parts asks for fields of all pairs of corners: noise must not make many of them. */
	@ParameterizedTest
	@CsvSource({ "3, 0", "3, 0.3", "3, 2", "0.5, 0.3", "0.5, 2", "0, 0.02", "0, 2" })
	void raggedOutlinesGetFewCorners(double gap, double noise) {
		Region region = Figures.ragged(new SplittableRandom(3), 10_000, 60, noise);
		// nothing fits into its pockets
		Solid solid = Clearance.of(region, gap, (width, height) -> Math.min(width, height) > 20);
		assertTrue(solid.pieces().stream().mapToInt(Convex::size).sum() < 1000);
		Geometry own = Polygons.of(region, 0.001);
		org.frisket.geometry.Point centre = region.bounds().centre();
		Geometry room = union(solid, centre.x(), centre.y());
		assertTrue(room.buffer(1e-6).contains(own));
		assertTrue(own.distance(room.getBoundary()) >= gap / 2 - 1e-6, "gap " + own.distance(room.getBoundary()));
		double size = Math.hypot(region.bounds().width(), region.bounds().height());
		double most = gap / 2 + 2 * 0.04 * size;
		assertTrue(DiscreteHausdorffDistance.distance(room.getBoundary(), own.getBoundary()) < most + noise);
	}

	/** A slit through which an offset closes, with a chamber behind it in which something fits. */
	@Test
	void chambersBehindNarrowMouthsStayFree() {
		List<Double> xy = new ArrayList<>(List.of(0.0, 0.0, 60.0, 0.0, 60.0, 60.0, 30.3, 60.0, 30.3, 50.0, 50.0, 50.0, 50.0,
				10.0, 10.0, 10.0, 10.0, 50.0, 30.0, 50.0, 30.0, 60.0, 0.0, 60.0));
		// many corners down the left side
		for (int i = 999; i > 0; i--) {
			xy.add(i % 2 * -0.1);
			xy.add(0.06 * i);
		}
		Region region = Figures.polygon(xy.stream().mapToDouble(Double::doubleValue).toArray());
		double chamber = 40 * 40;
		double full = 60 * 60;
		assertTrue(Clearance.of(region, 0, (w, h) -> w >= 30 && h >= 30).area() < full - 0.9 * chamber);
		assertTrue(Clearance.of(region, 3, (w, h) -> w >= 30 && h >= 30).area() < full - 0.5 * chamber);
		assertTrue(Clearance.of(region, 3, (w, h) -> w >= 45 && h >= 45).area() > full);
	}

	private static Geometry union(Solid solid, double dx, double dy) {
		GeometryFactory factory = new GeometryFactory();
		Geometry[] pieces = solid.pieces().stream().map(piece -> {
			Coordinate[] ring = new Coordinate[piece.size() + 1];
			for (int i = 0; i <= piece.size(); i++) {
				ring[i] = new Coordinate(piece.x(i % piece.size()) + dx, piece.y(i % piece.size()) + dy);
			}
			return factory.createPolygon(ring);
		}).toArray(Geometry[]::new);
		// closed over seams that rounding opened
		return factory.createGeometryCollection(pieces).buffer(1e-9).union();
	}
}
