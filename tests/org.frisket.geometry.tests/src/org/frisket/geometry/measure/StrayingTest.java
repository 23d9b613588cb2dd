package org.frisket.geometry.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Shapes;
import org.frisket.geometry.Transform;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;

class StrayingTest {

	private static final double ACCURACY = 0.001;

	private static Straying of(List<Contour> contours, List<Contour> from) {
		return Straying.of(contours, from, ACCURACY, Monitor.NONE);
	}

	@Test
	void theFurthestPlaceIsFoundWhereverItLies() {
		List<Contour> square = List.of(Shapes.rectangle(0, 0, 10, 10));
		assertEquals(5, of(PathData.parse("M0 0L10 10").contours(), square).mm(), ACCURACY, "amid a chord");
		assertEquals(2, of(PathData.parse("M0 0H12").contours(), square).mm(), ACCURACY, "at an end");
		assertEquals(0, of(square, PathData.parse("M0 0H10V10H0Z M90 90H99").contours()).mm(), "one way");
		assertEquals(Math.hypot(89, 80), of(PathData.parse("M0 0H10V10H0Z M90 90H99").contours(), square).mm(), 100 * ACCURACY);
		assertEquals(0.5, of(List.of(Shapes.circle(0, 0, 10)), List.of(Shapes.circle(0, 0, 10.5))).mm(), 2e-3);
	}

	@Test
	void nothingStraysNowhereAndFromNothingEverywhere() {
		List<Contour> square = List.of(Shapes.rectangle(0, 0, 10, 10));
		assertEquals(0, of(List.of(), square).mm());
		assertNull(of(List.of(), square).place());
		assertEquals(Double.POSITIVE_INFINITY, of(square, List.of()).mm());
		assertEquals(0, of(square, square).mm());
	}

	/** JTS measures at the ends of many short pieces, which misses less than half a piece. */
	@Test
	void figuresAreThoseOfTheDiscreteDistance() {
		Random random = new Random(53);
		for (int i = 0; i < 30; i++) {
			Contour one = Shapes.blob(random, 4, Shapes.point(random, 3), 5);
			Contour other = i % 2 == 0 ? Shapes.blob(random, 4, Shapes.point(random, 3), 5)
					: one.transformed(Transform.rotation(0.01 * random.nextGaussian()));
			DiscreteHausdorffDistance jts = new DiscreteHausdorffDistance(Polygons.ring(one, 1e-3),
					Polygons.ring(other, 1e-3));
			jts.setDensifyFraction(0.1);
			double there = of(List.of(one), List.of(other)).mm();
			double back = of(List.of(other), List.of(one)).mm();
			assertEquals(jts.distance(), Math.max(there, back), ACCURACY + 0.012, "number " + i);
		}
	}
}
