package org.frisket.typography.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.TextSpan;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class BoxFitTest {

	private static FontFace face;

	@BeforeAll
	static void openFont() throws Exception {
		face = new FontLibrary(List.of(new EmbeddedFontSource())).find("Liberation Sans");
	}

	private static Bounds bounds(String text, Setting setting, double capHeight) {
		return TextSetter.set(text, face, setting.withCapHeight(capHeight), Monitor.NONE).bounds();
	}

	@Test
	void capitalAloneFillsTheHeight() {
		assertEquals(50, BoxFit.capHeight("H", face, Setting.ofCapHeight(7), 500, 50, Monitor.NONE).getAsDouble(),
				1e-4);
	}

	@Test
	void largestThatFitsAndNoLarger() {
		Random random = new Random(3);
		for (int i = 0; i < 60; i++) {
			String text = List.of("Ferry", "Harbour\nLane", "g", "A B C D", "i").get(i % 5);
			Setting setting = Setting.ofCapHeight(1 + random.nextDouble() * 60)
					.withTracking(random.nextDouble() * 4 - 1).withWordSpacing(random.nextDouble());
			double width = 30 + random.nextDouble() * 300;
			double height = 10 + random.nextDouble() * 100;
			double found = BoxFit.capHeight(text, face, setting, width, height, Monitor.NONE).getAsDouble();
			Bounds fits = bounds(text, setting, found);
			assertTrue(fits.width() <= width && fits.height() <= height);
			Bounds larger = bounds(text, setting, found * (1 + 1e-5));
			assertTrue(larger.width() > width || larger.height() > height, text + " in " + width + " × " + height);
		}
	}

	@Test
	void linesAreBrokenAnew() {
		String text = "the ferry leaves at nine in the morning and comes back at five";
		double found = BoxFit.capHeight(text, face, Setting.ofCapHeight(10).withMeasure(100), 100, 80, Monitor.NONE)
				.getAsDouble();
		Bounds fits = bounds(text, Setting.ofCapHeight(1).withMeasure(100), found);
		assertTrue(fits.width() <= 100 && fits.height() <= 80);
		assertTrue(fits.height() > 55, "the box is used: " + fits.height());
	}

	@Test
	void spansGrowAlong() {
		double found = BoxFit.capHeight("HH", face, Setting.ofCapHeight(10), List.of(TextSpan.ofCapHeight(1, 2, 20)),
				900, 60, Monitor.NONE).getAsDouble();
		assertEquals(30, found, 1e-3);
	}

	@Test
	void whatCannotFitHasNoHeight() {
		assertEquals(OptionalDouble.empty(),
				BoxFit.capHeight("HHHHH", face, Setting.ofCapHeight(10).withTracking(30), 100, 10, Monitor.NONE));
		assertEquals(OptionalDouble.empty(), BoxFit.capHeight("  ", face, Setting.ofCapHeight(10), 9, 9, Monitor.NONE));
		assertThrows(IllegalArgumentException.class,
				() -> BoxFit.capHeight("a", face, Setting.ofCapHeight(10), 0, 9, Monitor.NONE));
	}
}
