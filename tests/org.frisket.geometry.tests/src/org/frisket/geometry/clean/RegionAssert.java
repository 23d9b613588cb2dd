package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Piece;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.valid.IsValidOp;

/** What every region promises, asked of JTS where it can tell. */
public final class RegionAssert {

	/** In mm, and in mm². */
	private static final double CUSP_DEVIATION = 1e-6;
	private static final double CUSP_AREA = 1e-7;

	private RegionAssert() {
	}

	public static void assertClean(Region region, double tolerance, String name) {
		for (Piece piece : region.pieces()) {
			assertTrue(piece.outer().signedArea() < 0, name + ": outer contour runs clockwise");
			piece.holes().forEach(h -> assertTrue(h.signedArea() > 0, name + ": hole runs counter-clockwise"));
		}
		for (Contour contour : region.contours()) {
			assertTrue(contour.isClosed());
			for (Segment segment : contour.segments()) {
				assertTrue(segment.length() >= tolerance * (1 - 1e-9), name + ": short segment " + segment);
			}
		}
		double deviation = tolerance / 64;
		assertValid(Polygons.of(region, deviation), region, name);
		assertNoTouch(region, deviation, name);
		for (int i = 1; i < region.pieces().size(); i++) {
			double above = region.pieces().get(i - 1).outer().start().y();
			assertTrue(above <= region.pieces().get(i).outer().start().y(), name + ": pieces out of order");
		}
	}

	/**
	 * Curves that end in a cusp come so near to each other there that chords cross which stand for them, however short
	 * they are. Then finer ones have to be valid, or what they cross around has to be next to nothing.
	 */
	private static void assertValid(Geometry polygons, Region region, String name) {
		IsValidOp valid = new IsValidOp(polygons);
		if (!valid.isValid()) {
			Geometry fine = Polygons.of(region, CUSP_DEVIATION);
			double crossed = Math.abs(fine.getArea() - GeometryFixer.fix(fine).getArea());
			assertTrue(crossed < CUSP_AREA, () -> name + ": " + valid.getValidationError() + ", crossed area " + crossed);
		}
	}

	/** JTS lets rings touch in single points; a region does not. */
	private static void assertNoTouch(Region region, double deviation, String name) {
		List<LinearRing> rings = new ArrayList<>();
		region.contours().forEach(c -> rings.add(Polygons.ring(c, deviation)));
		for (int i = 0; i < rings.size() && rings.size() < 80; i++) {
			for (int j = 0; j < i; j++) {
				boolean near = rings.get(i).getEnvelopeInternal().intersects(rings.get(j).getEnvelopeInternal());
				assertFalse(near && rings.get(i).intersects(rings.get(j)), name + ": contours touch");
			}
		}
	}
}
