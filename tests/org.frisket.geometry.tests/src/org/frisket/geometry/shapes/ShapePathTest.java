package org.frisket.geometry.shapes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.junit.jupiter.api.Test;

/** Areas against the formulas of elementary geometry. */
class ShapePathTest {

	/** What writing six decimals costs. */
	private static final double ROUNDING = 1e-4;
	/** An arc as cubics is off by up to 0.03 % of its radius. */
	private static final double ARC = 6e-4;

	private static double area(String data) {
		return -PathData.parse(data).contours().stream().mapToDouble(Contour::signedArea).sum();
	}

	private static void assertFills(double width, double height, String data) {
		Bounds bounds = PathData.parse(data).bounds();
		assertEquals(0, bounds.minX(), 1e-6);
		assertEquals(0, bounds.minY(), 1e-6);
		assertEquals(width, bounds.maxX(), 1e-6);
		assertEquals(height, bounds.maxY(), 1e-6);
	}

	@Test
	void rectangleIsReadable() {
		assertEquals("M0 0 L0 20.5 L30 20.5 L30 0 Z", ShapePath.rectangle(30, 20.5));
		assertEquals(615, area(ShapePath.rectangle(30, 20.5)), 1e-9);
	}

	@Test
	void roundedCornersTakeASquareLessACircle() {
		String data = ShapePath.roundedRectangle(30, 20, 4);
		assertEquals(600 - 16 * (4 - Math.PI), area(data), 16 * Math.PI * ARC);
		assertFills(30, 20, data);
		assertEquals(ShapePath.rectangle(30, 20), ShapePath.roundedRectangle(30, 20, 0));
		assertFills(30, 20, ShapePath.roundedRectangle(30, 20, 10));
	}

	@Test
	void ellipseHasItsArea() {
		String data = ShapePath.ellipse(30, 20);
		assertEquals(Math.PI * 15 * 10, area(data), Math.PI * 150 * ARC);
		assertFills(30, 20, data);
	}

	@Test
	void polygonHasItsArea() {
		for (int n = 3; n <= 12; n++) {
			// n / 2 r² sin(2π / n)
			assertEquals(n / 2.0 * 400 * Math.sin(2 * Math.PI / n), area(ShapePath.polygon(40, 40, n)), ROUNDING);
		}
		assertFills(40, 20, ShapePath.polygon(40, 20, 4));
	}

	@Test
	void starHasItsArea() {
		for (int n = 3; n <= 12; n++) {
			// 2 n triangles of sides r and r / 2 that meet at π / n
			assertEquals(n * 20 * 10 * Math.sin(Math.PI / n), area(ShapePath.star(40, 40, n, 0.5)), ROUNDING);
		}
	}

	@Test
	void bannerLosesTwoTriangles() {
		String data = ShapePath.banner(80, 20, 8);
		assertEquals(80 * 20 - 2 * 8 * 20 / 2.0, area(data), 1e-9);
		assertFills(80, 20, data);
	}

	@Test
	void tagLosesTwoCornersAndAHole() {
		String data = ShapePath.tag(60, 30, 10, 5);
		assertEquals(60 * 30 - 10 * 10 - Math.PI * 2.5 * 2.5, area(data), Math.PI * 6.25 * ARC);
		assertFills(60, 30, data);
		Outline outline = PathData.parse(data);
		assertEquals(2, outline.contours().size());
		assertTrue(outline.contours().get(0).signedArea() < 0);
		assertTrue(outline.contours().get(1).signedArea() > 0);
	}

	@Test
	void whatIsNoShapeIsRefused() {
		for (double bad : new double[] { 0, -1, Double.NaN, Double.POSITIVE_INFINITY }) {
			assertThrows(IllegalArgumentException.class, () -> ShapePath.rectangle(bad, 10));
			assertThrows(IllegalArgumentException.class, () -> ShapePath.ellipse(10, bad));
		}
		List.<Runnable>of(() -> ShapePath.roundedRectangle(10, 10, 6), () -> ShapePath.polygon(10, 10, 2),
				() -> ShapePath.star(10, 10, 5, 1), () -> ShapePath.banner(10, 10, 5),
				() -> ShapePath.tag(60, 30, 20, 5), () -> ShapePath.tag(60, 30, 10, 20))
				.forEach(shape -> assertThrows(IllegalArgumentException.class, shape::run));
	}
}
