package org.frisket.typography.join;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.Joiner;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TiesTest {

	private static final Tolerance FINE = new Tolerance(0.01);
	private static FontFace sans;
	private static FontFace symbols;

	@BeforeAll
	static void openFonts() throws Exception {
		FontLibrary library = new FontLibrary(List.of(new EmbeddedFontSource()));
		sans = library.find("Liberation Sans");
		symbols = library.find("DejaVu Sans");
	}

	private static Region region(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, FINE, Monitor.NONE).region();
	}

	private static Region region(String path) throws Exception {
		return region(PathData.parse(path));
	}

	private static SetText set(String text, FontFace face) {
		return TextSetter.set(text, face, Setting.ofCapHeight(20), Monitor.NONE);
	}

	private static String box(double x, double y, double width, double height) {
		return "M" + x + " " + y + "v" + height + "h" + width + "v" + -height + "z";
	}

	@Test
	void barStandsInTheMiddleOfEdgesSideBySide() throws Exception {
		// a slab 10 wide over another that starts 4 further right: they face each other from 4 to 10
		Region two = region(box(0, 0, 10, 2) + box(4, 5, 10, 2));
		Tied tied = Ties.all(two, 1, 4, FINE, Monitor.NONE);
		assertEquals(1, tied.bars().size());
		Bar bar = tied.bars().get(0);
		assertEquals(7, bar.from().x(), 0.05);
		assertEquals(7, bar.to().x(), 0.05);
		assertEquals(List.of(), tied.loose());
		assertEquals(20 + 20 + 3 * 1, tied.region().area(), 0.02);
	}

	@Test
	void gapWiderThanTheReachStays() throws Exception {
		Region three = region(box(0, 0, 10, 2) + box(0, 5, 10, 2) + box(0, 11, 10, 2));
		Tied tied = Ties.all(three, 1, 3.5, FINE, Monitor.NONE);
		assertEquals(1, tied.bars().size());
		assertEquals(1, tied.loose().size());
		assertEquals(11, tied.loose().get(0).bounds().minY(), 0.02);
		Tied further = Ties.all(three, 1, 4.5, FINE, Monitor.NONE);
		assertEquals(2, further.bars().size(), "not from the first to the last");
		assertEquals(List.of(), further.loose());
	}

	@Test
	void dotIsTiedToItsStem() {
		SetText text = set("i", sans);
		Tied tied = Ties.marks(text, region(text.outline()), 0.8, FINE, Monitor.NONE);
		assertEquals(1, tied.region().pieces().size());
		Bar bar = tied.bars().get(0);
		Bounds letter = text.bounds();
		assertEquals(letter.centre().x(), bar.from().x(), 0.1);
		assertEquals(letter.centre().x(), bar.to().x(), 0.1);
		double gap = tied.region().area() - region(text.outline()).area();
		Region parts = region(text.outline());
		double open = parts.pieces().get(1).bounds().minY() - parts.pieces().get(0).bounds().maxY();
		assertEquals(0.8 * open, gap, 0.03);
	}

	@Test
	void roundDotIsReachedOnItsUnderside() throws Exception {
		// a disc of radius 2 over a bar 1 below it
		String disc = "M-2 0A2 2 0 0 0 2 0A2 2 0 0 0 -2 0Z";
		Region parts = region(disc + box(-5, 3, 10, 2));
		Tied tied = Ties.all(parts, 1, 2, FINE, Monitor.NONE);
		Bar bar = tied.bars().get(0);
		assertEquals(0, bar.from().x(), 0.05);
		assertEquals(0, bar.to().x(), 0.05);
		// full width at the disc: both corners are within the circle
		assertTrue(Math.hypot(0.5, Math.min(bar.from().y(), bar.to().y())) <= 2.01);
		// and no deeper than that, by a step
		double deepest = Math.sqrt(4 - 0.25);
		assertEquals(deepest, Math.min(bar.from().y(), bar.to().y()), 0.05);
		// area of the bar outside: 1 wide, from the circle to the slab
		double segment = 2 * 2 * Math.asin(0.25) - 0.5 * Math.sqrt(4 - 0.25);
		double under = 3 - Math.sqrt(4 - 0.25) - segment;
		assertEquals(Math.PI * 4 + 20 + under, tied.region().area(), 0.03);
	}

	@Test
	void accentsBecomeOneWithTheirLetters() {
		for (String text : List.of("\u00E4", "\u00E9", "\u00FC", "j", "\u00C5", ":", "!", "\u00EE", "\u00D6", "%",
				"q\u0308\u0301", "\u0130", "\u064A", "\u062B")) {
			SetText set = set(text, symbols);
			Region apart = region(set.outline());
			Tied tied = Ties.marks(set, apart, 0.6, FINE, Monitor.NONE);
			assertEquals(1, tied.region().pieces().size(), text);
			assertEquals(apart.pieces().size() - 1, tied.bars().size(), text);
			assertTrue(tied.bars().isEmpty() || tied.region().area() > apart.area(), text);
		}
	}

	@Test
	void onlyWithinALetter() {
		SetText text = set("i l", sans);
		Tied tied = Ties.marks(text, region(text.outline()), 0.8, FINE, Monitor.NONE);
		assertEquals(2, tied.region().pieces().size());
		assertEquals(List.of(), tied.loose(), "the letters were not asked to hang together");
		assertEquals(1, tied.bars().size());
	}

	@Test
	void whatHoldsAlreadyIsLeft() {
		SetText text = set("iii", sans);
		Region letters = region(text.outline());
		Bounds dots = letters.pieces().get(0).bounds();
		Outline across = Outline.of(Contour.polygon(List.of(new Point(0, dots.minY()), new Point(0, dots.maxY()),
				new Point(30, dots.maxY()), new Point(30, dots.minY()))));
		Region held = Bars.united(letters, across, FINE, Monitor.NONE);
		assertEquals(4, held.pieces().size());
		Tied tied = Ties.marks(text, held, 0.8, FINE, Monitor.NONE);
		assertEquals(3, tied.bars().size());
		assertEquals(1, tied.region().pieces().size());
		Region whole = Bars.united(held, Bars.along(text, -1, 2, 0), FINE, Monitor.NONE);
		assertEquals(1, Ties.marks(text, whole, 0.8, FINE, Monitor.NONE).bars().size(),
				"feet hang together by the bar, dots by theirs");
	}

	@Test
	void chosenPiecesAreBridged() throws Exception {
		Region three = region(box(0, 0, 10, 2) + box(0, 5, 10, 2) + box(0, 11, 10, 2));
		Tied tied = Ties.bridge(three, 0, 1, 1.5, FINE, Monitor.NONE);
		assertEquals(2, tied.region().pieces().size());
		assertEquals(3 * 1.5, tied.region().area() - three.area(), 0.03);
		assertThrows(IllegalArgumentException.class, () -> Ties.bridge(three, 1, 1, 1, FINE, Monitor.NONE));
		assertThrows(IllegalArgumentException.class, () -> Ties.bridge(three, 0, 1, 0, FINE, Monitor.NONE));
		assertThrows(IndexOutOfBoundsException.class, () -> Ties.bridge(three, 0, 7, 1, FINE, Monitor.NONE));
	}

	@Test
	void thinPieceIsNotPierced() throws Exception {
		// the stroke above is thinner than the bar is wide, and is met end on
		Region two = region(box(-0.2, 0, 0.4, 10) + box(-5, 12, 10, 3));
		Tied tied = Ties.all(two, 2, 3, FINE, Monitor.NONE);
		assertEquals(1, tied.region().pieces().size());
		Bounds all = tied.region().bounds();
		assertEquals(0, all.minY(), 0.02);
		assertEquals(15, all.maxY(), 0.02);
	}

	@Test
	void aWholeWordBecomesOnePiece() {
		SetText joined = Joiner.join(set("Fähre im Möwenjagen", sans), 0.4, true, FINE, Monitor.NONE).text();
		Region region = region(joined.outline());
		assertTrue(region.pieces().size() > 1);
		Tied tied = Ties.marks(joined, region, 0.8, FINE, Monitor.NONE);
		assertEquals(1, tied.region().pieces().size());
		assertEquals(List.of(), tied.loose());
	}
}
