package org.frisket.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ImposerTest {

	private static final double FOOT = 304.8;

	private static Layout lay(Imposition imposition, long steps) {
		return Imposer.lay(imposition, Budget.steps(steps, 1), layout -> {
		}, Monitor.NONE);
	}

	private static Part part(String id, Region region, int quantity, Turning turning) {
		return new Part(id, region, quantity, turning, 0);
	}

	/** Yield of a grid, floor((W + g) / (w + g)) to a side: 25 squares of 50 mm on a sheet of 12 inches. */
	@Test
	void squaresLieInAGrid() {
		Layout layout = lay(new Imposition(List.of(part("square", Figures.rectangle(50, 50), 60, Turning.NONE)),
				Ground.sheets(FOOT, FOOT), 3, 10), 2_000_000);
		assertEquals(3, layout.sheets().size());
		assertEquals(25, layout.placements().stream().filter(p -> p.sheet() == 0).count());
		assertSound(layout, 3, 10);
	}

	/** 4 × 50 + 3 × 3 + 2 × 10 = 229. */
	@Test
	void whatFitsExactlyFits() {
		Layout layout = lay(new Imposition(List.of(part("square", Figures.rectangle(50, 50), 16, Turning.NONE)),
				Ground.sheets(229, 229), 3, 10), 2_000_000);
		assertEquals(1, layout.sheets().size());
		assertSound(layout, 3, 10);
	}

	@ParameterizedTest
	@EnumSource(Turning.class)
	void lettersOnSheetsKeepApart(Turning turning) {
		Layout layout = lay(new Imposition(stars(12, 4, turning), Ground.sheets(FOOT, FOOT), 2, 5), 300_000);
		assertTrue(layout.left().isEmpty());
		assertEquals(48, layout.placements().size());
		assertSound(layout, 2, 5);
		for (Placement placement : layout.placements()) {
			double steps = placement.radians() / (2 * Math.PI / turning.steps());
			assertEquals(Math.rint(steps), steps, 1e-9);
		}
	}

	@Test
	void rollsGetShorter() {
		List<Layout> found = new ArrayList<>();
		Imposition imposition = new Imposition(stars(10, 3, Turning.QUARTER), Ground.roll(300), 2, 5);
		Layout layout = Imposer.lay(imposition, Budget.steps(2_000_000, 5), found::add, Monitor.NONE);
		assertSound(layout, 2, 5);
		assertTrue(found.size() > 2, "layouts told of: " + found.size());
		for (int i = 1; i < found.size(); i++) {
			assertTrue(found.get(i).isBetterThan(found.get(i - 1)));
			assertSound(found.get(i), 2, 5);
		}
		assertTrue(layout.usedLength() < 0.8 * found.get(0).usedLength());
		assertTrue(layout.utilisation() > 0.5, "utilisation " + layout.utilisation());
	}

	/** A rectangle cut into triangles and put together again: the best there is is known. */
	@Test
	void piecesOfARectangleComeNearIt() {
		List<Part> parts = new ArrayList<>();
		SplittableRandom random = new SplittableRandom(9);
		for (int column = 0; column < 3; column++) {
			for (int row = 0; row < 2; row++) {
				double x = 20 + 60 * random.nextDouble();
				double y = 20 + 60 * random.nextDouble();
				parts.add(new Part("a" + column + row, Figures.polygon(0, 0, 100, 0, x, y)));
				parts.add(new Part("b" + column + row, Figures.polygon(100, 0, 100, 100, x, y)));
				parts.add(new Part("c" + column + row, Figures.polygon(100, 100, 0, 100, x, y)));
				parts.add(new Part("d" + column + row, Figures.polygon(0, 100, 0, 0, x, y)));
			}
		}
		Layout layout = lay(new Imposition(parts, Ground.roll(200), 0, 0), 8_000_000);
		assertSound(layout, 0, 0);
		assertTrue(layout.usedLength() >= 300 - 1e-6, "shorter than possible");
		assertTrue(layout.utilisation() > 0.8, "utilisation " + layout.utilisation());
	}

	@Test
	void smallPartsLieInHolesOfLargeOnes() {
		List<Part> parts = List.of(part("frame", Figures.frame(200, 200, 20), 1, Turning.NONE),
				part("disc", Figures.disc(25), 4, Turning.NONE));
		Layout layout = lay(new Imposition(parts, Ground.sheets(205, 205), 2, 2), 3_000_000);
		assertEquals(1, layout.sheets().size());
		assertTrue(layout.left().isEmpty());
		assertSound(layout, 2, 2);
	}

	@Test
	void sameSeedSameLayout() {
		Imposition roll = new Imposition(stars(8, 3, Turning.HALF), Ground.roll(200), 1, 0);
		assertEquals(lay(roll, 700_000), lay(roll, 700_000));
		Imposition sheets = new Imposition(stars(8, 4, Turning.FREE), Ground.sheets(200, 150), 1, 5);
		assertEquals(lay(sheets, 400_000), lay(sheets, 400_000));
	}

	@Test
	void whatIsTooLargeIsLeft() {
		List<Part> parts = List.of(part("large", Figures.rectangle(400, 20), 2, Turning.QUARTER),
				part("small", Figures.rectangle(40, 20), 3, Turning.NONE));
		Layout layout = lay(new Imposition(parts, Ground.sheets(FOOT, FOOT), 2, 5), 100_000);
		assertEquals(List.of("large"), layout.left().stream().map(Part::id).toList());
		assertEquals(2, layout.left().get(0).quantity());
		assertEquals(3, layout.placements().size());
		Layout roll = lay(new Imposition(parts, Ground.roll(300), 2, 5), 100_000);
		assertTrue(roll.left().isEmpty(), "turned it fits along the roll");
		assertSound(roll, 2, 5);
	}

	@Test
	void leftoversComeFirst() {
		List<Part> parts = List.of(part("card", Figures.rectangle(60, 40), 12, Turning.NONE));
		Layout layout = lay(new Imposition(parts, List.of(new Ground(140, 100, 1), Ground.sheets(300, 200)), 2, 5,
				List.of()), 200_000);
		assertEquals(140, layout.sheets().get(0).length());
		assertEquals(4, layout.placements().stream().filter(p -> p.sheet() == 0).count());
		assertEquals(2, layout.sheets().size());
		assertSound(layout, 2, 5);
	}

	@Test
	void asManySheetsAsThereAre() {
		List<Part> parts = List.of(part("card", Figures.rectangle(60, 40), 12, Turning.NONE));
		Layout layout = lay(new Imposition(parts, List.of(new Ground(140, 100, 2)), 2, 5, List.of()), 200_000);
		assertEquals(8, layout.placements().size());
		assertEquals(4, layout.left().get(0).quantity());
	}

	@Test
	void whatIsUrgentComesFirst() {
		List<Part> parts = List.of(new Part("later", Figures.rectangle(90, 90), 4, Turning.NONE, 2),
				new Part("today", Figures.rectangle(60, 60), 4, Turning.NONE, 1));
		Layout layout = lay(new Imposition(parts, Ground.sheets(200, 200), 2, 5), 50_000);
		assertTrue(layout.placements().stream().filter(p -> p.part().id().equals("today")).allMatch(p -> p.sheet() == 0));
	}

	@Test
	void whatIsFixedStays() {
		Placement fixed = new Placement(part("kept", Figures.rectangle(80, 50), 1, Turning.NONE), 0, new Point(100, 100),
				Math.toRadians(30));
		Layout layout = lay(new Imposition(stars(6, 2, Turning.HALF), List.of(Ground.sheets(250, 200)), 2, 5,
				List.of(fixed)), 500_000);
		Placement kept = layout.placements().stream().filter(p -> p.part().id().equals("kept")).findFirst().orElseThrow();
		assertEquals(fixed, kept);
		assertEquals(13, layout.placements().size());
		assertSound(layout, 2, 5);
	}

	@Test
	void cancelKeepsTheBest() {
		AtomicInteger told = new AtomicInteger();
		Layout layout = Imposer.lay(new Imposition(stars(10, 4, Turning.QUARTER), Ground.roll(300), 2, 5),
				Budget.steps(Long.MAX_VALUE - 1, 1), l -> told.incrementAndGet(), () -> told.get() >= 2);
		assertEquals(40, layout.placements().size());
		assertSound(layout, 2, 5);
	}

	@Test
	void thousandsOfPartsHaveALayoutAtOnce() {
		AtomicInteger told = new AtomicInteger();
		Layout layout = Imposer.lay(new Imposition(stars(20, 250, Turning.HALF), Ground.roll(600), 2, 5),
				Budget.steps(Long.MAX_VALUE - 1, 1), l -> told.incrementAndGet(), () -> told.get() >= 1);
		assertEquals(5000, layout.placements().size());
	}

	/** Noise finer than the gap, smooth outlines and coarse noise; by steps, so that no clock decides. */
	@Test
	void raggedPartsAreLaid() {
		SplittableRandom random = new SplittableRandom(4);
		List<Part> parts = List.of(part("fine", Figures.ragged(random, 10_000, 40, 0.05), 2, Turning.HALF),
				part("smooth", Figures.ragged(random, 10_000, 30, 0), 2, Turning.HALF),
				part("coarse", Figures.ragged(random, 10_000, 35, 1.5), 2, Turning.HALF));
		Layout layout = lay(new Imposition(parts, Ground.sheets(FOOT, FOOT), 2, 5), 20_000);
		assertEquals(1, layout.sheets().size());
		assertSound(layout, 2, 5);
	}

	@Test
	void refusesWhatCannotBe() {
		List<Part> parts = List.of(part("card", Figures.rectangle(60, 40), 1, Turning.NONE));
		assertThrows(IllegalArgumentException.class, () -> new Imposition(parts, Ground.sheets(100, 100), 2, 50));
		assertThrows(IllegalArgumentException.class, () -> new Imposition(parts, Ground.sheets(100, 100), -1, 5));
		assertThrows(IllegalArgumentException.class, () -> Ground.sheets(0, 100));
		assertThrows(IllegalArgumentException.class, () -> new Part("none", Region.EMPTY));
		assertThrows(IllegalArgumentException.class, () -> new Part("none", Figures.disc(3), 0, Turning.NONE, 0));
	}

	@Test
	void nothingToLay() {
		Layout layout = lay(new Imposition(List.of(), Ground.sheets(100, 100), 2, 5), 1000);
		assertTrue(layout.sheets().isEmpty());
		assertEquals(0, layout.utilisation());
		assertFalse(layout.isBetterThan(layout));
	}

	private static List<Part> stars(int kinds, int quantity, Turning turning) {
		SplittableRandom random = new SplittableRandom(11);
		List<Part> parts = new ArrayList<>();
		for (int i = 0; i < kinds; i++) {
			parts.add(part("star " + i, Polygons.toRegion(Figures.star(random, 5 + random.nextInt(8), 15 + 20 * random.nextDouble())),
					quantity, turning));
		}
		return parts;
	}

	private static void assertSound(Layout layout, double gap, double margin) {
		assertTrue(Figures.overlap(layout) < 1e-6, () -> "overlap " + Figures.overlap(layout));
		assertTrue(Figures.leastGap(layout) >= gap - 1e-6, () -> "gap " + Figures.leastGap(layout));
		for (Placement placement : layout.placements()) {
			Bounds bounds = placement.region().bounds();
			Ground sheet = layout.sheets().get(placement.sheet());
			double length = placement.sheet() == layout.sheets().size() - 1 ? layout.usedLength() : sheet.length();
			assertTrue(bounds.minX() >= margin - 1e-3 && bounds.minY() >= margin - 1e-3
					&& bounds.maxX() <= length - margin + 1e-3 && bounds.maxY() <= sheet.width() - margin + 1e-3,
					() -> placement.part().id() + " at " + bounds);
		}
	}
}
