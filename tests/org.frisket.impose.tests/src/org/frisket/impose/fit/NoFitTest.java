package org.frisket.impose.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.impose.Figures;
import org.frisket.impose.shape.Solid;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

class NoFitTest {

	/** How far apart parts may be and still be called overlapping, or the other way round. */
	private static final double EXACT = 1e-6;

	@Test
	void twoSquaresAreAsDeepAsTheNearestSide() {
		Solid square = Solid.of(List.of((Polygon) org.frisket.geometry.Polygons.of(
				Figures.polygon(-5, -5, 5, -5, 5, 5, -5, 5), 0.01)));
		NoFit field = new NoFit(square, square, 0);
		assertEquals(10, field.depth(0, 0), 1e-12);
		assertEquals(3, field.depth(7, 2), 1e-12);
		assertEquals(0, field.depth(10, 0));
		assertEquals(0, field.depth(3, -10.001));
		double[] way = new double[2];
		field.clear(-7, 2, way);
		assertEquals(-3, way[0], 1e-12);
		assertEquals(0, way[1], 1e-12);
	}

	/** What was let go of for want of room is made again, and says the same. */
	@Test
	void fieldsThatFindNoRoomAreMadeAgain() {
		SplittableRandom random = new SplittableRandom(8);
		Solid[] shapes = new Solid[6];
		for (int i = 0; i < shapes.length; i++) {
			shapes[i] = Solid.of(List.of(figure(random)));
		}
		NoFits plenty = new NoFits(shapes, 4, 0, Long.MAX_VALUE);
		NoFits tight = new NoFits(shapes, 4, 0, 1);
		NoFit first = tight.of(0, 1, 2);
		for (int i = 0; i < shapes.length; i++) {
			for (int j = i; j < shapes.length; j++) {
				double dx = 40 * random.nextDouble();
				double dy = 40 * random.nextDouble();
				assertEquals(plenty.of(i, j, 2).depth(dx, dy), tight.of(i, j, 2).depth(dx, dy));
			}
		}
		assertNotSame(first, tight.of(0, 1, 2));
		assertSame(plenty.of(0, 1, 2), plenty.of(0, 1, 2));
	}

	@Test
	void overlapsWhereJtsFindsArea() {
		SplittableRandom random = new SplittableRandom(3);
		int deep = 0;
		for (int i = 0; i < 150; i++) {
			Polygon a = figure(random);
			Polygon b = figure(random);
			NoFit field = new NoFit(Solid.of(List.of(a)), Solid.of(List.of(b)), 0);
			for (int k = 0; k < 40; k++) {
				double dx = 90 * (2 * random.nextDouble() - 1);
				double dy = 90 * (2 * random.nextDouble() - 1);
				Geometry moved = moved(b, dx, dy);
				double depth = field.depth(dx, dy);
				assertEquals(depth > 0, field.overlap(dx, dy));
				double area = a.intersection(moved).getArea();
				if (depth == 0) {
					assertTrue(area <= EXACT, () -> "overlap of " + area);
				} else if (depth > EXACT) {
					deep++;
					assertTrue(area > 0, () -> "no overlap at a depth of " + depth);
				}
			}
		}
		assertTrue(deep > 1000, "too few that overlap: " + deep);
	}

	@Test
	void theWayOutIsTheShortest() {
		SplittableRandom random = new SplittableRandom(4);
		double[] way = new double[2];
		for (int i = 0; i < 120; i++) {
			Polygon a = figure(random);
			Polygon b = figure(random);
			NoFit field = new NoFit(Solid.of(List.of(a)), Solid.of(List.of(b)), 0);
			for (int k = 0; k < 12; k++) {
				double dx = 40 * (2 * random.nextDouble() - 1);
				double dy = 40 * (2 * random.nextDouble() - 1);
				double depth = field.clear(dx, dy, way);
				if (depth == 0) {
					continue;
				}
				assertEquals(depth, field.depth(dx, dy), 1e-12);
				assertEquals(depth, Math.hypot(way[0], way[1]), 1e-9);
				double out = 1 + 1e-7 / depth;
				double left = a.intersection(moved(b, dx + out * way[0], dy + out * way[1])).getArea();
				assertTrue(left < 1e-4, () -> "still overlaps by " + left);
				for (int d = 0; d < 16; d++) {
					double x = dx + 0.98 * depth * Math.cos(d * Math.PI / 8);
					double y = dy + 0.98 * depth * Math.sin(d * Math.PI / 8);
					assertTrue(a.intersection(moved(b, x, y)).getArea() > 0, "a shorter way");
				}
			}
		}
	}

	@Test
	void slackKeepsPartsApart() {
		SplittableRandom random = new SplittableRandom(5);
		double[] way = new double[2];
		for (int i = 0; i < 60; i++) {
			Polygon a = figure(random);
			Polygon b = figure(random);
			NoFit field = new NoFit(Solid.of(List.of(a)), Solid.of(List.of(b)), 0.5);
			double dx = 20 * (2 * random.nextDouble() - 1);
			double depth = field.clear(dx, 3, way);
			double out = 1 + 1e-9 / depth;
			assertTrue(a.distance(moved(b, dx + out * way[0], 3 + out * way[1])) >= 0.5 - 1e-6);
		}
	}

	@Test
	void seenFromTheOtherItIsTheSame() {
		SplittableRandom random = new SplittableRandom(6);
		for (int i = 0; i < 60; i++) {
			Solid a = Solid.of(List.of(figure(random)));
			Solid b = Solid.of(List.of(figure(random)));
			NoFit there = new NoFit(a, b, 0);
			NoFit back = new NoFit(b, a, 0);
			for (int k = 0; k < 50; k++) {
				double dx = 60 * (2 * random.nextDouble() - 1);
				double dy = 60 * (2 * random.nextDouble() - 1);
				assertEquals(there.depth(dx, dy), back.depth(-dx, -dy), 1e-8);
			}
		}
	}

	private static Polygon figure(SplittableRandom random) {
		return random.nextInt(3) == 0 ? Figures.ring(random, 3 + random.nextInt(12), 45)
				: Figures.star(random, 3 + random.nextInt(12), 45);
	}

	private static Geometry moved(Geometry geometry, double dx, double dy) {
		return AffineTransformation.translationInstance(dx, dy).transform(geometry);
	}
}
