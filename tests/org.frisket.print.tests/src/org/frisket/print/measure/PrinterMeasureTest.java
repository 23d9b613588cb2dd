package org.frisket.print.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.print.register.PrinterProfile;
import org.frisket.print.register.RegisterException;
import org.junit.jupiter.api.Test;

/** A printer measured by a square. The lengths are from the law of cosines, not from any map. */
class PrinterMeasureTest {

	private static final LocalDate DAY = LocalDate.of(2026, 11, 30);

	/** @param skew by which y leans towards x, so that the corner between the edges is smaller, radians */
	private static PrinterMeasure printed(double side, double across, double down, double skew) {
		double a = side * across;
		double b = side * down;
		double cosine = Math.sin(skew);
		return new PrinterMeasure(side, a, b, Math.sqrt(a * a + b * b + 2 * a * b * cosine),
				Math.sqrt(a * a + b * b - 2 * a * b * cosine));
	}

	@Test
	void scaleAndSkewFollowFromFourLengths() throws RegisterException {
		Random random = new Random(5);
		for (int round = 0; round < 60; round++) {
			double across = 1 + 0.01 * random.nextGaussian();
			double down = 1 + 0.01 * random.nextGaussian();
			double skew = 0.004 * random.nextGaussian();
			PrinterMeasure measure = printed(180, across, down, skew);
			PrinterProfile profile = measure.profile("Front desk", DAY);
			assertEquals(across, profile.scaleX(), 1e-9);
			assertEquals(down, profile.scaleY(), 1e-9);
			assertEquals(skew, profile.skew(), 1e-9);
			assertEquals(DAY, profile.measured());
			assertEquals(List.of(), measure.findings());
		}
	}

	@Test
	void aMisreadLengthIsSaid() throws RegisterException {
		PrinterMeasure right = printed(180, 1.003, 0.998, 0);
		PrinterMeasure slip = new PrinterMeasure(180, right.across(), right.down(), right.falling() + 3, right.rising() + 3);
		assertFalse(slip.findings().isEmpty(), "both diagonals cannot be longer");
		assertThrows(RegisterException.class,
				() -> new PrinterMeasure(180, 18.05, right.down(), right.falling(), right.rising()).profile("Front desk", DAY));
	}

	@Test
	void theSquareIsAsLargeAsSheetAndRulerAllow() {
		assertEquals(180, new PrinterSheet(210, 297).side());
		assertEquals(180, new PrinterSheet(215.9, 279.4).side());
		assertEquals(200, new PrinterSheet(297, 420).side());
		assertThrows(IllegalArgumentException.class, () -> new PrinterSheet(70, 100));
		Random random = new Random(7);
		for (int round = 0; round < 100; round++) {
			PrinterSheet sheet = new PrinterSheet(90 + 500 * random.nextDouble(), 110 + 500 * random.nextDouble());
			Bounds square = sheet.square();
			assertEquals(sheet.side(), square.width(), 1e-9);
			assertEquals(sheet.side(), square.height(), 1e-9);
			assertTrue(square.minX() >= 15 - 1e-9 && square.minY() >= 15 - 1e-9 && square.maxX() <= sheet.width() - 15 + 1e-9
					&& square.maxY() <= sheet.height() - 35 + 1e-9, () -> sheet + " " + square);
			assertTrue(sheet.side() * Math.sqrt(2) < 300, "within a ruler");
		}
	}
}
