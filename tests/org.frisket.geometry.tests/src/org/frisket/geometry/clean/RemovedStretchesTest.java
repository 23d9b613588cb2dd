package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;

class RemovedStretchesTest {

	private static final double NEAR = 2 * Tolerance.DEFAULT.mm();

	private static Outline removed(String pathData) throws Exception {
		return removed(PathData.parse(pathData));
	}

	private static Outline removed(Outline before) {
		CleanResult clean = new OutlineCleaner().clean(before, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE);
		return RemovedStretches.of(before, clean.region().toOutline().plus(new Outline(clean.open())),
				Tolerance.DEFAULT, Monitor.NONE);
	}

	private static double length(Outline outline) {
		return outline.contours().stream().mapToDouble(Contour::length).sum();
	}

	@Test
	void cleanOutlineLosesNothing() throws Exception {
		assertTrue(removed("M0 0V10H10V0Z M3 3H6V6H3Z").isEmpty());
		assertTrue(removed("M0 0 C 10 0 20 10 20 20 S 10 40 0 40 Z").isEmpty());
		assertTrue(removed("").isEmpty());
	}

	@Test
	void overlapOfTwoSquaresLosesTheStretchesInside() throws Exception {
		Outline removed = removed("M0 0H10V10H0Z M5 5H15V15H5Z");
		assertEquals(2, removed.contours().size());
		// each square has a corner of 5 by 5 inside the other
		assertEquals(20, length(removed), 4 * NEAR);
		Bounds bounds = removed.bounds();
		assertEquals(5, bounds.minX(), NEAR);
		assertEquals(10, bounds.maxY(), NEAR);
		removed.contours().forEach(contour -> assertEquals(2, contour.segments().size()));
	}

	@Test
	void stretchThroughTheStartOfAContourIsOne() throws Exception {
		// the second square begins in the corner that lies inside the first
		assertEquals(2, removed("M0 0H10V10H0Z M5 5H15V15H5Z").contours().size());
		assertEquals(2, removed("M0 0H10V10H0Z M15 5V15H5V5Z").contours().size());
	}

	@Test
	void contourWithinAnotherOfTheSameWindingGoesAltogether() throws Exception {
		Outline removed = removed("M0 0H10V10H0Z M3 3H6V6H3Z");
		assertEquals(12, length(removed), NEAR);
		assertEquals(1, removed.contours().size());
	}

	@Test
	void duplicateIsNotMarkedForItsEdgesStay() throws Exception {
		assertTrue(removed("M0 0H10V10H0Z M0 0H10V10H0Z").isEmpty());
	}

	@Test
	void openLinesStay() throws Exception {
		assertTrue(removed("M0 0H10 M5 -5V5").isEmpty());
	}

	@Test
	void cancelIsHeeded() throws Exception {
		Outline squares = PathData.parse("M0 0H10V10H0Z M5 5H15V15H5Z");
		assertThrows(CancellationException.class,
				() -> RemovedStretches.of(squares, squares, Tolerance.DEFAULT, () -> true));
	}

	/** What is removed and what came out make up the whole outline, and no place of the two is the same. */
	@Test
	void everyPlaceIsEitherRemovedOrOnTheRegion() {
		for (int seed = 0; seed < 40; seed++) {
			Random random = new Random(seed);
			List<Contour> contours = new ArrayList<>();
			for (int i = 0; i < 6; i++) {
				double x = random.nextDouble(0, 40);
				double y = random.nextDouble(0, 40);
				double width = random.nextDouble(4, 25);
				double height = random.nextDouble(4, 25);
				contours.add(Contour.polygon(List.of(new Point(x, y), new Point(x + width, y + 1),
						new Point(x + width - 2, y + height), new Point(x - 1, y + height - 1))));
			}
			Outline before = new Outline(contours);
			Region region = new OutlineCleaner().clean(before, FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
					.region();
			double whole = length(before);
			double removed = length(removed(before));
			assertEquals(whole, removed + region.perimeter(), 0.004 * whole, "seed " + seed);
		}
	}
}
