package org.frisket.impose.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.impose.Budget;
import org.frisket.impose.Figures;
import org.frisket.impose.Ground;
import org.frisket.impose.Imposition;
import org.frisket.impose.Layout;
import org.frisket.impose.Part;
import org.frisket.impose.Turning;
import org.junit.jupiter.api.Test;

/** Cards for all guests: each another word. What counts is work, not time. */
class CrowdTest {

	private static final double GAP = 2;
	private static final double MARGIN = 5;
	private static final double LENGTH = 100;
	private static final double WIDTH = 80;
	private static final int GUESTS = 60;

	private static Problem words(int count) {
		SplittableRandom random = new SplittableRandom(3);
		List<Part> parts = new ArrayList<>();
		for (int i = 0; i < count; i++) {
			parts.add(new Part("guest " + i, Figures.word(random, 4 + random.nextInt(7)), 1, Turning.HALF, 0));
		}
		return new Problem(new Imposition(parts, Ground.sheets(LENGTH, WIDTH), GAP, MARGIN), Monitor.NONE);
	}

	private static int pieces(Problem problem) {
		int pieces = 0;
		for (int s = 0; s < problem.shapes.count; s++) {
			pieces += problem.shapes.solid(s, 0).pieces().size();
		}
		return pieces / problem.shapes.count;
	}

	@Test
	void guestsLieSoundlyOnFewSheetsWithLittleWork() {
		Problem problem = words(GUESTS);
		List<Layout> told = new ArrayList<>();
		Layout layout = Searches.run(problem, Budget.steps(5, 1), told::add, Monitor.NONE);
		assertEquals(GUESTS, layout.placements().size());
		assertSound(layout);
		told.forEach(CrowdTest::assertSound);
		assertTrue(told.size() > 2, "layouts told of on the way: " + told.size());
		assertTrue(layout.sheets().size() < told.get(0).sheets().size(), "no better than rows");
		assertTrue(pieces(problem) <= 10 && pieces(words(20)) > 13, "pieces of each: " + pieces(problem));
		// of all pairs in both turns, and of each with itself
		long all = (long) GUESTS * (GUESTS + 1);
		assertTrue(problem.shapes.made() < 0.6 * all, "fields made: " + problem.shapes.made() + " of " + all);
	}

	/** What was filled stays, what was not comes in rows: nobody waits for nothing. */
	@Test
	void whoIsStoppedHasALayoutOfAll() {
		Layout layout = stopped();
		assertEquals(GUESTS, layout.placements().size());
		assertTrue(layout.left().isEmpty());
		assertSound(layout);
		assertEquals(layout, stopped());
	}

	private static Layout stopped() {
		List<Layout> told = new ArrayList<>();
		return Searches.run(words(GUESTS), Budget.steps(Long.MAX_VALUE - 1, 1), told::add, () -> told.size() >= 2);
	}

	private static void assertSound(Layout layout) {
		assertTrue(Figures.leastGap(layout) >= GAP - 1e-6, () -> "gap " + Figures.leastGap(layout));
		layout.placements().forEach(placement -> {
			Bounds box = placement.region().bounds();
			assertTrue(box.minX() >= MARGIN - 1e-3 && box.minY() >= MARGIN - 1e-3 && box.maxX() <= LENGTH - MARGIN + 1e-3
					&& box.maxY() <= WIDTH - MARGIN + 1e-3, () -> placement.part().id() + " at " + box);
		});
	}
}
