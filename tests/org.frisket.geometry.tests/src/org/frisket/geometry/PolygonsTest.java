package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;

class PolygonsTest {

	private static Region ring() {
		return new Region(List.of(new Piece(Shapes.circle(5, 5, 4), List.of(Shapes.circle(5, 5, 2).reversed()))));
	}

	@Test
	void holesAreCutOut() {
		Geometry polygon = Polygons.of(ring(), 1e-5);
		assertTrue(polygon instanceof Polygon && polygon.isValid());
		assertEquals(ring().area(), polygon.getArea(), 1e-3);
	}

	@Test
	void severalPiecesMakeAMultiPolygon() {
		Region region = new Region(List.of(new Piece(Shapes.rectangle(0, 0, 1, 1), List.of()),
				new Piece(Shapes.rectangle(2, 0, 1, 1), List.of())));
		assertTrue(Polygons.of(region, 0.01) instanceof MultiPolygon);
		assertTrue(Polygons.of(Region.EMPTY, 0.01).isEmpty());
	}

	@Test
	void backConversionKeepsAreaAndWinding() {
		Region back = Polygons.toRegion(Polygons.of(ring(), 0.01));
		Piece piece = back.pieces().get(0);
		assertTrue(piece.outer().signedArea() < 0, "outer counter-clockwise to the viewer");
		assertTrue(piece.holes().get(0).signedArea() > 0);
		assertEquals(Polygons.of(ring(), 0.01).getArea(), back.area(), 1e-9);
	}

	@Test
	void windingDoesNotDependOnTheRingsOwn() {
		Polygon polygon = (Polygon) Polygons.of(ring(), 0.01);
		assertEquals(Polygons.toRegion(polygon), Polygons.toRegion(polygon.reverse().reverse()));
		assertEquals(Polygons.toRegion(polygon).area(), Polygons.toRegion(polygon.reverse()).area(), 1e-12);
		assertTrue(Polygons.toRegion(polygon.reverse()).pieces().get(0).outer().signedArea() < 0);
	}

	@Test
	void coarseDeviationStillLeavesARing() {
		Contour lens = PathData.parse("M0 0C1-1 2-1 3 0 2 1 1 1 0 0Z").contours().get(0);
		assertTrue(Polygons.ring(lens, 100).getNumPoints() >= 4);
	}
}
