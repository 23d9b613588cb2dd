package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Line;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.prepare.layout.PageLayout;
import org.frisket.prepare.layout.PageSetup;
import org.frisket.prepare.layout.Paper;
import org.junit.jupiter.api.Test;

class PageLayoutTest {

	private static final double EXACT = 1e-6;
	private static final PageSetup UPRIGHT = new PageSetup(Paper.A4, false, false);

	private static Bounds box(double x, double y, double width, double height) {
		return new Bounds(x, y, x + width, y + height);
	}

	@Test
	void smallJobLiesInTheMiddleOfOnePageAtTrueSize() {
		PageLayout layout = PageLayout.of(box(7, -3, 50, 40), UPRIGHT);
		assertEquals(1, layout.pages());
		assertEquals(1, layout.scale());
		Transform toPaper = layout.toPaper(0);
		Point middle = toPaper.apply(new Point(32, 17));
		assertEquals(layout.area().centre().x(), middle.x(), EXACT);
		assertEquals(layout.area().centre().y(), middle.y(), EXACT);
		assertEquals(50, toPaper.apply(new Point(57, 0)).x() - toPaper.apply(new Point(7, 0)).x(), EXACT);
		assertTrue(layout.marks(0).isEmpty());
	}

	@Test
	void emptyJobHasOneEmptyPage() {
		assertEquals(1, PageLayout.of(Bounds.EMPTY, UPRIGHT).pages());
		assertEquals(1, PageLayout.of(Bounds.EMPTY, new PageSetup(Paper.A4, false, true)).scale());
	}

	@Test
	void jobAsLargeAsTheAreaNeedsOnePageAndOneThatIsLargerTwo() {
		double width = UPRIGHT.areaWidth();
		assertEquals(190, width);
		assertEquals(1, PageLayout.of(box(0, 0, width, 10), UPRIGHT).pages());
		assertEquals(2, PageLayout.of(box(0, 0, width + 0.1, 10), UPRIGHT).columns());
		assertEquals(2, PageLayout.of(box(0, 0, 2 * width - PageSetup.OVERLAP, 10), UPRIGHT).columns());
		assertEquals(3, PageLayout.of(box(0, 0, 2 * width - PageSetup.OVERLAP + 0.1, 10), UPRIGHT).columns());
	}

	/** Counted in 32 bits, columns times rows would be any number, a small one too. */
	@Test
	void absurdlyLargeJobHasMorePagesThanCanBeCounted() {
		for (double size : new double[] { 1e8, 1e9, 1e12, 1e300 }) {
			PageLayout layout = PageLayout.of(box(0, 0, size, size), UPRIGHT);
			assertEquals(Integer.MAX_VALUE, layout.pages(), String.valueOf(size));
			assertEquals(1, PageLayout.of(box(0, 0, size, size), new PageSetup(Paper.A4, true, true)).pages());
		}
	}

	@Test
	void lyingPaperIsWider() {
		PageSetup lying = new PageSetup(Paper.A4, true, false);
		assertEquals(297, lying.width());
		assertEquals(1, PageLayout.of(box(0, 0, 270, 100), lying).pages());
		assertEquals(2, PageLayout.of(box(0, 0, 270, 100), UPRIGHT).pages());
		assertEquals(195.9, new PageSetup(Paper.LETTER, false, false).areaWidth(), EXACT);
	}

	@Test
	void fittedJobIsMadeSmallerAndNeverLarger() {
		PageSetup fit = new PageSetup(Paper.A4, false, true);
		PageLayout large = PageLayout.of(box(100, 100, 380, 100), fit);
		assertEquals(1, large.pages());
		assertEquals(0.5, large.scale(), EXACT);
		assertEquals(1, PageLayout.of(box(0, 0, 20, 20), fit).scale());
	}

	@Test
	void tilesAreNamedByColumnAndRow() {
		PageLayout layout = PageLayout.of(box(0, 0, 400, 500), UPRIGHT);
		assertEquals(3, layout.columns());
		assertEquals(2, layout.rows());
		Set<String> names = new TreeSet<>();
		for (int page = 0; page < layout.pages(); page++) {
			names.add(layout.tile(page));
		}
		assertEquals(Set.of("A1", "B1", "C1", "A2", "B2", "C2"), names);
		assertEquals("A2", layout.tile(3));
		assertEquals("AA1", PageLayout.of(box(0, 0, 26 * 178 + 20, 10), UPRIGHT).tile(26));
	}

	/** Every place of the job is on some page, within its area, and neighbours share exactly the overlap. */
	@Test
	void pagesCoverTheJobAndOverlap() {
		Random random = new Random(17);
		for (int round = 0; round < 300; round++) {
			Bounds job = box(random.nextDouble(-500, 500), random.nextDouble(-500, 500), random.nextDouble(1, 1500),
					random.nextDouble(1, 1500));
			PageSetup setup = new PageSetup(Paper.values()[random.nextInt(2)], random.nextBoolean(), false);
			PageLayout layout = PageLayout.of(job, setup);
			for (int i = 0; i < 20; i++) {
				Point place = new Point(random.nextDouble(job.minX(), job.maxX()),
						random.nextDouble(job.minY(), job.maxY()));
				boolean found = false;
				for (int page = 0; page < layout.pages() && !found; page++) {
					found = layout.shown(page).contains(place)
							&& layout.area().grown(EXACT).contains(layout.toPaper(page).apply(place));
				}
				assertTrue(found, place + " of " + job + " is on no page");
			}
			if (layout.columns() > 1) {
				assertEquals(PageSetup.OVERLAP, layout.shown(0).maxX() - layout.shown(1).minX(), EXACT);
			}
			if (layout.rows() > 1) {
				assertEquals(PageSetup.OVERLAP, layout.shown(0).maxY() - layout.shown(layout.columns()).minY(), EXACT);
			}
			assertTrue(layout.shown(layout.pages() - 1).maxX() - job.maxX() < setup.areaWidth() / 2 + EXACT);
		}
	}

	@Test
	void marksOfNeighboursLieOnTheSamePlacesOfTheJob() {
		PageLayout layout = PageLayout.of(box(0, 0, 300, 400), UPRIGHT);
		assertEquals(4, layout.pages());
		assertEquals(4, layout.marks(0).size());
		Line right = layout.marks(0).get(0);
		Line left = layout.marks(1).get(0);
		Point onFirst = layout.toPaper(0).inverse().apply(right.start());
		Point onSecond = layout.toPaper(1).inverse().apply(left.start());
		assertEquals(onFirst.x(), onSecond.x(), EXACT);
		assertEquals(onFirst.y(), onSecond.y(), EXACT);
		for (int page = 0; page < layout.pages(); page++) {
			for (Line mark : layout.marks(page)) {
				assertTrue(layout.area().contains(mark.start()) && layout.area().contains(mark.end()));
			}
		}
	}

	@Test
	void captionLiesBelowTheAreaAndOnThePaper() {
		for (Paper paper : Paper.values()) {
			PageLayout layout = PageLayout.of(box(0, 0, 10, 10), new PageSetup(paper, true, true));
			assertEquals(layout.area().maxY(), layout.caption().minY(), EXACT);
			assertEquals(layout.setup().height() - PageSetup.MARGIN, layout.caption().maxY(), EXACT);
		}
	}
}
