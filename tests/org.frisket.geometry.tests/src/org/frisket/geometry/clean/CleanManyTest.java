package org.frisket.geometry.clean;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Cubic;
import org.frisket.geometry.Line;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Segment;
import org.frisket.geometry.Tolerance;
import org.junit.jupiter.api.Test;

/** Twenty thousand small outlines of nothing but awkward places, with a fixed seed. */
class CleanManyTest {

	private static final int COUNT = 20_000;
	/** Of so many one has its area counted, and is cleaned again. */
	private static final int SAMPLE = 10;
	private static final double TOLERANCE = 0.02;
	private static final double FAR = 1e6;
	private static final double NEARLY = 1e-9;

	@Test
	void nothingLeavesThatIsNotValid() {
		Random random = new Random(81);
		double filled = 0;
		for (int i = 0; i < COUNT; i++) {
			Outline outline = outline(random);
			FillRule rule = random.nextBoolean() ? FillRule.NON_ZERO : FillRule.EVEN_ODD;
			String name = "number " + i + " " + rule;
			Region region = clean(outline, rule);
			RegionAssert.assertClean(region, TOLERANCE, name);
			filled += region.area();
			if (i % SAMPLE == 0) {
				double perimeter = outline.contours().stream().mapToDouble(Contour::length).sum();
				assertEquals(ScannedArea.of(outline, rule), region.area(), TOLERANCE * perimeter + 1e-3, name);
				assertTrue(region.equals(clean(region.toOutline(), FillRule.NON_ZERO)), name + ": cleaned twice");
			}
		}
		assertTrue(filled > 5 * COUNT, "something is filled: " + filled);
	}

	private static Region clean(Outline outline, FillRule rule) {
		return new OutlineCleaner().clean(outline, rule, new Tolerance(TOLERANCE), Monitor.NONE).region();
	}

	private static Outline outline(Random random) {
		Point origin = random.nextInt(4) > 0 ? Point.ORIGIN
				: new Point(random.nextBoolean() ? FAR : -FAR, random.nextBoolean() ? FAR : -FAR);
		List<Point> places = new ArrayList<>();
		List<Contour> contours = new ArrayList<>();
		for (int k = 1 + random.nextInt(3); k > 0; k--) {
			List<Segment> segments = new ArrayList<>();
			int count = 3 + random.nextInt(6);
			Point first = place(random, origin, places);
			Point last = first;
			for (int i = 1; i <= count; i++) {
				Point next = i == count ? first : place(random, origin, places);
				segments.add(random.nextInt(6) > 0 ? new Line(last, next)
						: new Cubic(last, place(random, origin, places), place(random, origin, places), next));
				last = next;
			}
			contours.add(Contour.closed(segments));
			if (random.nextInt(8) == 0) {
				contours.add(random.nextBoolean() ? contours.get(0) : contours.get(0).reversed());
			}
		}
		return new Outline(contours);
	}

	/** On a lattice, on the way between two others, on another one, or hardly beside it. */
	private static Point place(Random random, Point origin, List<Point> places) {
		Point place;
		if (places.size() < 3 || random.nextInt(3) == 0) {
			place = origin.plus(new Point(random.nextInt(9), random.nextInt(9)));
		} else {
			Point one = places.get(random.nextInt(places.size()));
			Point other = places.get(random.nextInt(places.size()));
			place = switch (random.nextInt(5)) {
			case 0 -> one;
			case 1 -> one.towards(other, random.nextInt(5) / 4.0);
			case 2 -> one.plus(new Point(NEARLY * random.nextGaussian(), NEARLY * random.nextGaussian()));
			case 3 -> one.towards(other, random.nextDouble()).plus(new Point(0, NEARLY));
			default -> origin.plus(new Point(9 * random.nextDouble(), 9 * random.nextDouble()));
			};
		}
		places.add(place);
		return place;
	}
}
