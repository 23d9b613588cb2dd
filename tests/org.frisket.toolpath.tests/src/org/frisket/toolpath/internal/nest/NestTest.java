package org.frisket.toolpath.internal.nest;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.toolpath.Drawings;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Against JTS, which tells for two polygons whether one covers the other. */
class NestTest {

	private static final double TOLERANCE = 0.01;
	private static final GeometryFactory FACTORY = new GeometryFactory();

	@Test
	void randomShapes() {
		SplittableRandom random = new SplittableRandom(1);
		int nested = 0;
		for (int run = 0; run < 30; run++) {
			List<Contour> contours = new ArrayList<>();
			fill(random, 50, 50, 45, 4, contours);
			Collections.shuffle(contours, new Random(run));
			int[] parents = Nest.parents(contours, TOLERANCE, Monitor.NONE);
			assertArrayEquals(byJts(contours), parents);
			for (int parent : parents) {
				nested += parent >= 0 ? 1 : 0;
			}
		}
		assertTrue(nested > 500, "nested: " + nested);
	}

	/** One shape, and smaller ones within a circle that it holds; some shapes are open. */
	private static void fill(SplittableRandom random, double x, double y, double room, int deep, List<Contour> contours) {
		contours.add(random.nextBoolean() ? Drawings.jagged(random, x, y, 0.7 * room, room, 5 + random.nextInt(20))
				: Drawings.smooth(random, x, y, 0.7 * room, 0.9 * room, 6 + random.nextInt(6)));
		int many = deep == 0 ? 0 : 1 + random.nextInt(4);
		double inner = 0.45 * room;
		for (int i = 0; i < many; i++) {
			double a = 2 * Math.PI * (i + 0.2 * random.nextDouble()) / many;
			double own = many == 1 ? inner * 0.8 : 0.38 * inner * 2 * Math.sin(Math.PI / Math.max(3, many)) / 2;
			double r = many == 1 ? 0 : 0.5 * inner;
			fill(random, x + r * Math.cos(a), y + r * Math.sin(a), Math.min(own, inner / 2.2), deep - 1, contours);
		}
	}

	private static int[] byJts(List<Contour> contours) {
		List<Geometry> shapes = contours.stream().map(NestTest::shape).toList();
		int[] parents = new int[contours.size()];
		for (int i = 0; i < parents.length; i++) {
			parents[i] = -1;
			for (int k = 0; k < parents.length; k++) {
				if (k != i && shapes.get(k).getArea() > shapes.get(i).getArea() && shapes.get(k).covers(shapes.get(i))
						&& (parents[i] < 0 || shapes.get(k).getArea() < shapes.get(parents[i]).getArea())) {
					parents[i] = k;
				}
			}
		}
		return parents;
	}

	private static Geometry shape(Contour contour) {
		List<Coordinate> ring = new ArrayList<>();
		for (Point point : contour.flattened(1e-3)) {
			ring.add(new Coordinate(point.x(), point.y()));
		}
		ring.add(ring.get(0));
		return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
	}

	@Test
	void touchingLinesLieWithin() {
		List<Contour> contours = List.of(Drawings.box(0, 0, 20, 20),
				// along one edge, along two, to within the tolerance outside, and at corners only
				Drawings.box(0, 5, 5, 5), Drawings.box(15, 15, 5, 5), Drawings.box(8, -0.005, 3, 3),
				Drawings.polygon(10, 0, 20, 10, 10, 20, 0, 10), Drawings.polyline(0, 2, 3, 2), Drawings.polyline(12, 0, 14, 0));
		int[] parents = Nest.parents(contours, TOLERANCE, Monitor.NONE);
		assertArrayEquals(new int[] { -1, 0, 0, 0, 0, 0, -1 }, parents);
	}

	@Test
	void crossingOutsideAndAlikeDoNot() {
		List<Contour> contours = List.of(Drawings.box(0, 0, 20, 20), Drawings.box(15, 5, 10, 5), Drawings.box(20, 0, 5, 5),
				Drawings.box(0, 0, 20, 20), Drawings.polyline(5, 5, 25, 5), Drawings.box(-3, 8, 26, 2));
		assertArrayEquals(new int[] { -1, -1, -1, -1, -1, -1 }, Nest.parents(contours, TOLERANCE, Monitor.NONE));
	}

	/** In the middle of a five-pointed star drawn in one go the line winds round twice. */
	@Test
	void whatIsWoundRoundTwiceIsWithin() {
		double[] star = new double[10];
		for (int i = 0; i < 5; i++) {
			star[2 * i] = 10 * Math.cos(4 * Math.PI * i / 5);
			star[2 * i + 1] = 10 * Math.sin(4 * Math.PI * i / 5);
		}
		assertArrayEquals(new int[] { -1, 0 }, Nest.parents(List.of(Drawings.polygon(star), Drawings.circle(0, 0, 1)),
				TOLERANCE, Monitor.NONE));
	}

	@Test
	void ringsInRings() {
		int n = 401;
		List<Contour> rings = new ArrayList<>();
		for (int i = 0; i < n; i++) {
			rings.add(Drawings.circle(0, 0, 1 + (i * 7 % n)));
		}
		int[] parents = Nest.parents(rings, TOLERANCE, Monitor.NONE);
		for (int i = 0; i < n; i++) {
			int size = i * 7 % n;
			assertEquals(size == n - 1 ? -1 : size + 1, parents[i] < 0 ? -1 : parents[i] * 7 % n);
		}
	}
}
