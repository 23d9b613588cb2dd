package org.frisket.print.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

/** How residuals are drawn so that they are seen. */
class ArrowScaleTest {

	@Test
	void theLongestFitsAndTheNextStepWouldNot() {
		Random random = new Random(3);
		for (int round = 0; round < 500; round++) {
			double size = Math.pow(10, -3 + 4 * random.nextDouble());
			List<Point> residuals = List.of(new Point(size * random.nextGaussian(), size * random.nextGaussian()),
					new Point(size * random.nextGaussian(), size * random.nextGaussian()));
			double most = Math.max(residuals.get(0).length(), residuals.get(1).length());
			double longest = 5 + 40 * random.nextDouble();
			double factor = ArrowScale.of(residuals, longest);
			double digit = factor / Math.pow(10, Math.floor(Math.log10(factor) + 1e-9));
			assertTrue(List.of(1L, 2L, 5L).contains(Math.round(digit)), "a round factor: " + factor);
			assertTrue(factor == 1 || factor * most <= longest, factor + " x " + most + " > " + longest);
			assertTrue(factor * 2.5 * most > longest || factor == 1000, "a larger one would do: " + factor);
		}
	}

	@Test
	void nothingIsDrawnAsItIs() {
		assertEquals(1, ArrowScale.of(List.of(), 20));
		assertEquals(1, ArrowScale.of(List.of(Point.ORIGIN), 20));
		assertEquals(1, ArrowScale.of(List.of(new Point(80, 0)), 20), "never smaller than it is");
	}
}
