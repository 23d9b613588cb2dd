package org.frisket.impose.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;

import org.frisket.impose.Figures;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

class PartingTest {

	@Test
	void convexOnesStayWhole() {
		assertEquals(1, Parting.of(Figures.star(new SplittableRandom(1), 3, 10)).size());
	}

	@Test
	void piecesAreConvexAndCoverExactly() {
		SplittableRandom random = new SplittableRandom(2);
		for (int i = 0; i < 500; i++) {
			Polygon polygon = i % 2 == 0 ? Figures.star(random, 3 + random.nextInt(30), 50)
					: Figures.ring(random, 3 + random.nextInt(30), 50);
			List<Convex> pieces = Parting.of(polygon);
			assertEquals(polygon.getArea(), pieces.stream().mapToDouble(PartingTest::area).sum(),
					1e-9 * polygon.getArea());
			pieces.forEach(PartingTest::assertConvex);
			// a parting needs no more than the triangles there are
			assertTrue(pieces.size() <= polygon.getNumPoints() - 2 + 2 * polygon.getNumInteriorRing());
		}
	}

	private static void assertConvex(Convex piece) {
		int n = piece.size();
		for (int i = 0; i < n; i++) {
			double ax = piece.x((i + 1) % n) - piece.x(i);
			double ay = piece.y((i + 1) % n) - piece.y(i);
			double bx = piece.x((i + 2) % n) - piece.x((i + 1) % n);
			double by = piece.y((i + 2) % n) - piece.y((i + 1) % n);
			assertTrue(ax * by - ay * bx >= -1e-9, "corner " + i);
		}
	}

	private static double area(Convex piece) {
		double sum = 0;
		for (int i = 0; i < piece.size(); i++) {
			int j = (i + 1) % piece.size();
			sum += piece.x(i) * piece.y(j) - piece.x(j) * piece.y(i);
		}
		return sum / 2;
	}

	@Test
	void convexOnesMeetAsMinkowskiSays() {
		// of two squares: a square of both sides (Minkowski sum of boxes)
		Convex a = new Convex(new double[] { 0, 4, 4, 0 }, new double[] { 0, 0, 4, 4 });
		Convex b = new Convex(new double[] { 0, 2, 2, 0 }, new double[] { 0, 0, 2, 2 });
		Convex sum = a.meeting(b);
		assertEquals(36, area(sum), 1e-12);
		assertEquals(4, sum.size());
	}
}
