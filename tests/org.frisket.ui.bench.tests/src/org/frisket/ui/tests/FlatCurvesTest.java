package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.PathDataException;
import org.frisket.geometry.Point;
import org.frisket.ui.bench.internal.picture.FlatCurves;
import org.junit.jupiter.api.Test;

/** What lies under the pointer. */
class FlatCurvesTest {

	private static FlatCurves ring() throws PathDataException {
		String data = SampleJob.circle(50, 40, 20, false) + SampleJob.circle(50, 40, 10, true);
		return new FlatCurves(PathData.parse(data), 0.001);
	}

	@Test
	void ringContainsWhatLiesBetweenItsCirclesAndNothingElse() throws PathDataException {
		FlatCurves ring = ring();
		Random random = new Random(7);
		for (int i = 0; i < 20_000; i++) {
			Point point = new Point(20 + 60 * random.nextDouble(), 10 + 60 * random.nextDouble());
			double distance = point.distance(new Point(50, 40));
			// four cubics stay within 0.03 % of the circle
			if (Math.abs(distance - 20) > 0.01 && Math.abs(distance - 10) > 0.01) {
				assertEquals(distance > 10 && distance < 20, ring.contains(point), point.toString());
			}
		}
	}

	@Test
	void reachExtendsBothWaysFromAnEdge() throws PathDataException {
		FlatCurves ring = ring();
		assertTrue(ring.touches(new Point(50, 40 + 20.9), 1));
		assertFalse(ring.touches(new Point(50, 40 + 21.1), 1));
		assertTrue(ring.touches(new Point(50 + 9.1, 40), 1));
		assertFalse(ring.touches(new Point(50 + 8.9, 40), 1));
	}

	@Test
	void openLineIsFoundNearItAndEnclosesNothing() {
		Point corner = new Point(10, 0);
		Contour angle = Contour.open(List.of(new Line(Point.ORIGIN, corner), new Line(corner, new Point(10, 10))));
		FlatCurves flat = new FlatCurves(Outline.of(angle), 0.01);
		assertFalse(flat.contains(new Point(7, 3)));
		assertTrue(flat.touches(new Point(7, 0.4), 0.5));
		assertTrue(flat.touches(new Point(-0.3, 0.3), 0.5));
		assertFalse(flat.touches(new Point(5, 5), 0.5));
	}

	private static List<Point> box(double x, double y, double width, double height) {
		return List.of(new Point(x, y), new Point(x + width, y), new Point(x + width, y + height),
				new Point(x, y + height));
	}

	@Test
	void boxMeetsTheRingUnlessItLiesInTheHoleOrInACornerOfTheBounds() throws PathDataException {
		FlatCurves ring = ring();
		assertTrue(ring.meets(box(20, 10, 60, 60)));
		assertTrue(ring.meets(box(49, 51, 2, 2)));
		assertTrue(ring.meets(box(45, 35, 10, 20)));
		assertTrue(ring.meets(box(29, 39, 2, 2)));
		assertFalse(ring.meets(box(45, 35, 10, 10)));
		assertFalse(ring.meets(box(30, 20, 5, 5)));
		assertFalse(ring.meets(box(80, 20, 5, 5)));
	}

	@Test
	void boxMeetsTheRingWhereAnyOfItsPointsIsInTheRing() throws PathDataException {
		FlatCurves ring = ring();
		Random random = new Random(11);
		int met = 0;
		for (int i = 0; i < 4_000; i++) {
			double x = 25 + 50 * random.nextDouble();
			double y = 15 + 50 * random.nextDouble();
			double turn = random.nextDouble() * Math.PI;
			double half = 0.2 + 6 * random.nextDouble();
			double ux = Math.cos(turn) * half;
			double uy = Math.sin(turn) * half;
			List<Point> square = List.of(new Point(x + ux, y + uy), new Point(x - uy, y + ux),
					new Point(x - ux, y - uy), new Point(x + uy, y - ux));
			double least = Double.POSITIVE_INFINITY;
			double most = 0;
			for (int j = 0; j < 40; j++) {
				for (int k = 0; k < 40; k++) {
					double s = j / 39.0;
					double t = k / 39.0;
					Point a = square.get(0);
					double px = a.x() + s * (square.get(1).x() - a.x()) + t * (square.get(3).x() - a.x());
					double py = a.y() + s * (square.get(1).y() - a.y()) + t * (square.get(3).y() - a.y());
					double distance = Math.hypot(px - 50, py - 40);
					least = Math.min(least, distance);
					most = Math.max(most, distance);
				}
			}
			double slack = 0.02 + half * 0.06;
			if (least < 20 - slack && most > 10 + slack) {
				assertTrue(ring.meets(square), square.toString());
				met++;
			} else if (least > 20 + slack || most < 10 - slack) {
				assertFalse(ring.meets(square), square.toString());
			}
		}
		assertTrue(met > 1_000);
	}

	@Test
	void boxMeetsAnOpenLineOnlyWhereItRuns() {
		Point corner = new Point(10, 0);
		Contour angle = Contour.open(List.of(new Line(Point.ORIGIN, corner), new Line(corner, new Point(10, 10))));
		FlatCurves flat = new FlatCurves(Outline.of(angle), 0.01);
		assertTrue(flat.meets(box(4, -1, 1, 2)));
		assertTrue(flat.meets(box(9, 4, 2, 1)));
		assertTrue(flat.meets(box(-1, -1, 12, 12)));
		assertFalse(flat.meets(box(2, 2, 5, 5)));
	}

	@Test
	void nothingIsNowhere() {
		FlatCurves nothing = new FlatCurves(Outline.EMPTY, 0.01);
		assertFalse(nothing.touches(Point.ORIGIN, 1000));
		assertFalse(nothing.meets(box(-10, -10, 20, 20)));
	}
}
