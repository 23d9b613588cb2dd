package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;

/** One long curve that wanders about a sheet and crosses itself thousands of times: all of it is one cluster. */
class CleanTangleTest {

	private static final int LEGS = 4500;
	private static final int FEW_LEGS = 400;
	private static final double STEP = 3;
	private static final double ROOM = 2.2;
	private static final int CANCELS = 12;
	/** At least one poll for so many segments. */
	private static final int SEGMENTS_PER_POLL = 8;

	/** Where so much is crowded together, several places are too narrow to be told apart. */
	@Test
	void staysValidAndCurvedWhereManyPlacesAreTooNarrow() {
		Outline outline = Outline.of(tangle(LEGS));
		CleanResult result = new OutlineCleaner().clean(outline, FillRule.EVEN_ODD, Tolerance.DEFAULT, Monitor.NONE);
		Region region = result.region();
		RegionAssert.assertClean(region, Tolerance.DEFAULT.mm(), "tangle");
		long filled = result.repairs().stream().filter(r -> r.kind() == Repair.Kind.GAP_FILLED).count();
		assertTrue(filled > 1, "gaps filled: " + filled);
		// fillings bring a few lines; lines only would mean that all had to be rounded to a grid
		long straight = region.contours().stream().flatMap(c -> c.segments().stream())
				.filter(s -> !(s instanceof Cubic)).count();
		assertTrue(straight < region.nodeCount() / 20, "straight lines: " + straight + " of " + region.nodeCount());
		// edges that move, move either way, so that their sum is far below what the tolerance allows
		double allowed = Tolerance.DEFAULT.mm() / 10 * outline.contours().get(0).length();
		assertEquals(ScannedArea.of(outline, FillRule.EVEN_ODD), region.area(), allowed);
	}

	/** Of the many steps none goes on for long without asking. */
	@Test
	void asksAgainAndAgainWhetherToGoOn() {
		Outline outline = Outline.of(tangle(FEW_LEGS));
		int[] asked = { 0 };
		clean(outline, () -> ++asked[0] < 0);
		int all = asked[0];
		assertTrue(all > outline.nodeCount() / SEGMENTS_PER_POLL, "asked: " + all + " for " + outline.nodeCount());
		for (int i = 0; i < CANCELS; i++) {
			int last = 1 + (int) ((long) i * (all - 1) / (CANCELS - 1));
			asked[0] = 0;
			assertThrows(CancellationException.class, () -> clean(outline, () -> ++asked[0] >= last));
			assertEquals(last, asked[0], "stopped at once");
		}
	}

	private static void clean(Outline outline, Monitor monitor) {
		new OutlineCleaner().clean(outline, FillRule.EVEN_ODD, Tolerance.DEFAULT, monitor);
	}

	/** Cubics that go on smoothly from each other. */
	private static Contour tangle(int legs) {
		Random random = new Random(5);
		double side = Math.sqrt(legs) * ROOM;
		List<Point> places = new ArrayList<>();
		Point place = new Point(side / 2, side / 2);
		double direction = 0;
		while (places.size() < 2 * legs) {
			direction += (random.nextDouble() - 0.5) * 1.5;
			Point next = place.plus(new Point(Math.cos(direction), Math.sin(direction)).times(STEP));
			if (next.x() < 0 || next.y() < 0 || next.x() > side || next.y() > side) {
				direction += Math.PI / 2;
				continue;
			}
			place = next;
			places.add(place);
		}
		List<Segment> segments = new ArrayList<>();
		Point first = places.get(places.size() - 1).towards(places.get(0), 0.5);
		Point from = first;
		for (int i = 0; i < places.size(); i += 2) {
			Point to = i + 2 == places.size() ? first : places.get(i + 1).towards(places.get(i + 2), 0.5);
			segments.add(new Cubic(from, places.get(i), places.get(i + 1), to));
			from = to;
		}
		return Contour.closed(segments);
	}
}
