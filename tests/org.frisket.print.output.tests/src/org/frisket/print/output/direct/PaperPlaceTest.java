package org.frisket.print.output.direct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.junit.jupiter.api.Test;

class PaperPlaceTest {

	private static final double EXACT = 1e-9;

	/** A4 at 72 units to the inch with margins of a quarter of an inch, as GTK tells it of printing to a file. */
	private static PaperPlace a4() {
		return new PaperPlace(72, 72, new Bounds(-18, -18, 577, 824), new Bounds(0, 0, 559, 806));
	}

	@Test
	void theSheetLiesInTheCornerOfThePaperInItsTrueSize() {
		PaperPlace place = a4();
		assertEquals(new Point(-18, -18), place.toUnits().apply(Point.ORIGIN));
		Point inch = place.toUnits().apply(new Point(25.4, 50.8));
		assertEquals(54, inch.x(), EXACT);
		assertEquals(126, inch.y(), EXACT);
		assertEquals(6.35, place.printable().minX(), EXACT);
		assertEquals(209.9, place.paperMm().width(), 0.02);
		assertEquals(25.4 / 72, place.unit(), EXACT);
	}

	@Test
	void coarseUnitsAreSplitIntoPixelsAndFineOnesPutTogether() {
		Strip coarse = a4().strips(new Bounds(0, 0, 210, 297)).get(0);
		assertEquals(5 * coarse.width(), coarse.pixels());
		assertEquals(5 * coarse.height(), coarse.rows());
		PaperPlace laser = new PaperPlace(600, 1200, new Bounds(-100, -200, 4860, 13_830), new Bounds(0, 0, 4760, 13_630));
		Strip fine = laser.strips(new Bounds(0, 0, 210, 297)).get(0);
		assertEquals(fine.width(), fine.pixels());
		assertEquals(fine.height(), 2 * fine.rows());
	}

	/**
	 * Whatever the printer and the sheet: strips lie on each other without a gap, hold all there is, and are bounded.
	 */
	@Test
	void stripsCoverAllThatCanBePrinted() {
		Random random = new Random(5);
		for (int round = 0; round < 300; round++) {
			int dpiX = List.of(72, 96, 300, 360, 600, 1200, 2400).get(random.nextInt(7));
			int dpiY = random.nextBoolean() ? dpiX : List.of(72, 150, 300, 600, 720, 2400).get(random.nextInt(6));
			int left = random.nextInt(dpiX);
			int top = random.nextInt(dpiY);
			int width = dpiX * (2 + random.nextInt(20));
			int height = dpiY * (2 + random.nextInt(20));
			PaperPlace place = new PaperPlace(dpiX, dpiY, new Bounds(-left, -top, width + left, height + top),
					new Bounds(0, 0, width, height));
			Bounds content = new Bounds(random.nextDouble() * 20, random.nextDouble() * 20, 30 + random.nextDouble() * 400,
					30 + random.nextDouble() * 400);
			List<Strip> strips = place.strips(content);
			Bounds all = Bounds.EMPTY;
			int end = strips.get(0).y() + 1;
			for (Strip strip : strips) {
				assertTrue(strip.y() < end, strip.toString());
				end = strip.y() + strip.height();
				assertTrue(strip.x() >= 0 && strip.y() >= 0, strip.toString());
				assertTrue((double) strip.pixels() * strip.rows() <= 1.1 * PaperPlace.MOST_PIXELS, strip.toString());
				all = all.with(strip.piece());
				// a pixel is as wide in mm everywhere, to the last digit
				assertEquals(25.4 / dpiX * strip.width() / strip.pixels(), strip.piece().width() / strip.pixels(), EXACT);
				Point corner = place.toUnits().apply(new Point(strip.piece().minX(), strip.piece().minY()));
				assertEquals(strip.x(), corner.x(), 1e-6);
				assertEquals(strip.y(), corner.y(), 1e-6);
			}
			Bounds reach = place.printable();
			assertTrue(all.minX() <= Math.max(content.minX(), reach.minX()) + EXACT, all + " " + content);
			assertTrue(all.minY() <= Math.max(content.minY(), reach.minY()) + EXACT, all + " " + content);
			assertTrue(all.maxX() >= Math.min(content.maxX(), reach.maxX()) - EXACT, all + " " + content);
			assertTrue(all.maxY() >= Math.min(content.maxY(), reach.maxY()) - EXACT, all + " " + content);
		}
	}

	@Test
	void whatCannotBeReachedIsNotSent() {
		assertEquals(List.of(), a4().strips(new Bounds(300, 400, 320, 420)));
		assertEquals(List.of(), a4().strips(Bounds.EMPTY));
		assertThrows(IllegalArgumentException.class,
				() -> new PaperPlace(0, 72, new Bounds(0, 0, 1, 1), new Bounds(0, 0, 1, 1)));
	}
}
