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

	@Test
	void nothingIsNowhere() {
		FlatCurves nothing = new FlatCurves(Outline.EMPTY, 0.01);
		assertFalse(nothing.touches(Point.ORIGIN, 1000));
	}
}
