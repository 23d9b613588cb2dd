package org.frisket.impose.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.impose.Figures;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class DentsTest {

	@Test
	void fewShapesKeepTheirDents() {
		assertEquals(Integer.MAX_VALUE, Dents.mostPieces(Dents.FEW_SHAPES, 24));
		for (int shapes = Dents.FEW_SHAPES + 1; shapes < 3000; shapes++) {
			assertTrue(Dents.mostPieces(shapes, 2) <= Dents.mostPieces(shapes - 1, 2));
			assertTrue(Dents.mostPieces(shapes, 2) >= 4);
			assertTrue(Dents.mostPieces(shapes, 24) <= Dents.mostPieces(shapes, 2));
		}
	}

	/** Nothing of the shape sticks out, and little more is taken: measured by JTS. */
	@Test
	void whatIsFilledCoversTheShapeAndLittleMore() {
		SplittableRandom random = new SplittableRandom(6);
		int before = 0;
		int after = 0;
		for (int i = 0; i < 60; i++) {
			Polygon star = i % 2 == 0 ? Figures.star(random, 5 + random.nextInt(90), 40)
					: Figures.ring(random, 5 + random.nextInt(90), 40);
			Solid exact = Solid.of(List.of(star));
			Solid filled = Dents.filled(List.of(star), 6);
			before += exact.pieces().size();
			after += filled.pieces().size();
			assertTrue(filled.pieces().size() <= exact.pieces().size());
			Geometry union = union(filled);
			assertTrue(union.buffer(1e-6).contains(star));
			assertEquals(union.getArea(), filled.area(), 1e-3);
			assertTrue(union.getArea() <= 1.081 * star.getArea(), "area " + union.getArea() / star.getArea());
		}
		assertTrue(after < 0.85 * before, "pieces " + after + " of " + before);
	}

	/** Half the gap and a wavy edge, as words have: few pieces are left of many. */
	@Test
	void wavesAreFilled() {
		double[] xy = new double[202];
		for (int i = 0; i <= 100; i++) {
			xy[2 * i] = 0.6 * i;
			xy[2 * i + 1] = i == 0 || i == 100 ? 12 : 0.35 * (1 + Math.sin(i));
		}
		Polygon waves = (Polygon) org.frisket.geometry.Polygons.of(Figures.polygon(xy), 0.001);
		assertTrue(Solid.of(List.of(waves)).pieces().size() > 12);
		assertTrue(Dents.filled(List.of(waves), 6).pieces().size() <= 6);
	}

	private static Geometry union(Solid solid) {
		GeometryFactory factory = new GeometryFactory();
		Geometry[] pieces = solid.pieces().stream().map(piece -> {
			Coordinate[] ring = new Coordinate[piece.size() + 1];
			for (int i = 0; i <= piece.size(); i++) {
				ring[i] = new Coordinate(piece.x(i % piece.size()), piece.y(i % piece.size()));
			}
			return factory.createPolygon(ring);
		}).toArray(Geometry[]::new);
		return factory.createGeometryCollection(pieces).buffer(1e-9).union();
	}
}
