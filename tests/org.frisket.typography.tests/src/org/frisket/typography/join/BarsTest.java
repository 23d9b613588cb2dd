package org.frisket.typography.join;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BarsTest {

	private static final Tolerance FINE = new Tolerance(0.01);
	private static FontFace face;

	@BeforeAll
	static void openFont() throws Exception {
		face = new FontLibrary(List.of(new EmbeddedFontSource())).find("Liberation Sans");
	}

	private static SetText set(String text) {
		return TextSetter.set(text, face, Setting.ofCapHeight(20), Monitor.NONE);
	}

	private static Region region(Outline outline) {
		return new OutlineCleaner().clean(outline, FillRule.NON_ZERO, FINE, Monitor.NONE).region();
	}

	@Test
	void underlineLiesUnderEveryLine() {
		SetText text = set("HIM\n\nL");
		Outline bars = Bars.along(text, 3, 2, 1);
		assertEquals(2, bars.contours().size());
		Bounds first = bars.contours().get(0).bounds();
		assertEquals(new Bounds(text.letters().get(0).outline().bounds().minX() - 1, 3,
				text.letters().get(2).outline().bounds().maxX() + 1, 5), first);
		assertEquals(2 * 32 + 3, bars.contours().get(1).bounds().minY(), 1e-9);
		assertTrue(bars.contours().stream().allMatch(c -> c.signedArea() < 0), "counter-clockwise to the viewer");
	}

	@Test
	void baselineBarHoldsTheLetters() {
		SetText text = set("HIM");
		Region apart = region(text.outline());
		assertEquals(3, apart.pieces().size());
		Region held = Bars.united(apart, Bars.along(text, -0.5, 2, 0), FINE, Monitor.NONE);
		assertEquals(1, held.pieces().size());
		assertEquals(1.5, held.bounds().maxY(), 1e-6);
		assertTrue(held.area() > apart.area() + 1.5 * held.bounds().width() - 0.05);
	}

	@Test
	void frameStandsAboutTheBox() {
		Bounds box = new Bounds(0, 0, 100, 40);
		Outline square = Bars.frame(box, 5, 3, 0);
		assertEquals(116 * 56 - 110 * 50, region(square).area(), 1e-6);
		assertEquals(new Bounds(-8, -8, 108, 48), square.bounds());
		Outline round = Bars.frame(box, 5, 3, 10);
		double corners = (4 - Math.PI) * (10 * 10 - 7 * 7);
		assertEquals(116 * 56 - 110 * 50 - corners, region(round).area(), 0.05);
		Outline most = Bars.frame(box, 5, 3, 1e6);
		assertEquals(1, region(most).pieces().size());
		assertEquals(1, region(most).pieces().get(0).holes().size());
	}

	@Test
	void frameThatCutsInHoldsWhatItMeets() {
		SetText text = set("HH");
		Region letters = region(text.outline());
		Region framed = Bars.united(letters, Bars.frame(letters.bounds(), -0.4, 2, 0), FINE, Monitor.NONE);
		assertEquals(1, framed.pieces().size());
	}

	@Test
	void senselessMeasuresAreRefused() {
		Bounds box = new Bounds(0, 0, 10, 10);
		assertThrows(IllegalArgumentException.class, () -> Bars.frame(box, -5, 1, 0));
		assertThrows(IllegalArgumentException.class, () -> Bars.frame(box, 1, 0, 0));
		assertThrows(IllegalArgumentException.class, () -> Bars.frame(box, 1, 1, -1));
		assertThrows(IllegalArgumentException.class, () -> Bars.frame(Bounds.EMPTY, 1, 1, 0));
		assertThrows(IllegalArgumentException.class, () -> Bars.along(set("H"), 0, -1, 0));
	}
}
