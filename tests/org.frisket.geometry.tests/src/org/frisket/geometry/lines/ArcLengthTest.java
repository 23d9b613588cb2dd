package org.frisket.geometry.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

/** The place of a curve that is nearest to a point, by the length along the curve. */
class ArcLengthTest {

	private static ArcLength curve(String pathData) throws Exception {
		Contour contour = PathData.parse(pathData).contours().get(0);
		return new ArcLength(contour);
	}

	@Test
	void nearestOfALineIsThePerpendicularOrAnEnd() throws Exception {
		ArcLength line = curve("M10 0L30 0L30 40");
		assertEquals(5, line.nearest(new Point(15, -3)), 1e-6);
		assertEquals(0, line.nearest(new Point(2, 1)), 0);
		assertEquals(60, line.nearest(new Point(31, 55)), 1e-9);
		assertEquals(35, line.nearest(new Point(33, 15)), 1e-6);
	}

	/** No sample of the curve is nearer, open or closed. */
	@Test
	void nothingOfTheCurveIsNearer() throws Exception {
		Random random = new Random(11);
		for (int round = 0; round < 150; round++) {
			StringBuilder path = new StringBuilder("M").append(place(random));
			for (int i = 0; i < 3; i++) {
				path.append(random.nextBoolean() ? "C" + place(random) + place(random) + place(random)
						: "L" + place(random));
			}
			ArcLength curve = curve(path + (random.nextBoolean() ? "Z" : ""));
			Point point = new Point(random.nextDouble() * 140 - 20, random.nextDouble() * 140 - 20);
			double found = curve.nearest(point);
			assertTrue(found >= 0 && found <= curve.length());
			double distance = curve.at(found).point().distance(point);
			for (int i = 0; i <= 400; i++) {
				Point sample = curve.at(curve.length() * i / 400).point();
				assertTrue(distance <= sample.distance(point) + 1e-3, path + " near " + point);
			}
		}
	}

	/** A place of the curve is nearest to itself, so that a drag that goes nowhere changes nothing. */
	@Test
	void placeOfTheCurveIsFoundAgain() throws Exception {
		ArcLength curve = curve("M10 150C60 100 120 190 190 140");
		for (int i = 0; i <= 50; i++) {
			double along = curve.length() * i / 50;
			assertEquals(along, curve.nearest(curve.at(along).point()), 1e-4);
		}
	}

	private static String place(Random random) {
		return " %d %d".formatted(random.nextInt(100), random.nextInt(100));
	}
}
