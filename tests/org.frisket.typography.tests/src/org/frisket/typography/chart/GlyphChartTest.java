package org.frisket.typography.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;

import org.frisket.typography.FontFace;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class GlyphChartTest {

	private static FontFace face;
	private static GlyphChart chart;

	@BeforeAll
	static void openFont() throws Exception {
		face = new FontLibrary(List.of(new EmbeddedFontSource())).find("DejaVu Sans");
		chart = GlyphChart.of(face);
	}

	@Test
	void everyGlyphIsThereOnce() {
		assertEquals(face.glyphCount(), chart.entries().size());
		assertEquals(face.glyphCount(),
				chart.entries().stream().map(GlyphEntry::glyph).collect(Collectors.toSet()).size());
		List<GlyphEntry> known = chart.entries().stream().filter(e -> !e.characters().isEmpty()).toList();
		assertEquals(known, chart.entries().subList(0, known.size()));
		for (int i = 1; i < known.size(); i++) {
			assertTrue(known.get(i - 1).characters().get(0) < known.get(i).characters().get(0));
		}
		assertTrue(known.size() < chart.entries().size(), "alternates and ligatures too");
	}

	@Test
	void kindsFollowTheCharacters() {
		assertEquals(GlyphKind.CAPITAL, kind("A"));
		assertEquals(GlyphKind.SMALL, kind("\u00E9"));
		assertEquals(GlyphKind.LETTER, kind("\u0634"));
		assertEquals(GlyphKind.FIGURE, kind("7"));
		assertEquals(GlyphKind.PUNCTUATION, kind("\u201C"));
		assertEquals(GlyphKind.SYMBOL, kind("\u20AC"));
		assertEquals(GlyphKind.ORNAMENT, kind("\u2766"));
		assertEquals(GlyphKind.MARK, kind("\u0301"));
		assertEquals(GlyphKind.BLANK, chart.search("U+0020").get(0).kind());
		assertEquals(GlyphKind.LIGATURE, GlyphKind.of("f_f_i"));
		assertEquals(GlyphKind.LIGATURE, GlyphKind.of("f_f_i.alt"));
		assertEquals(GlyphKind.ALTERNATE, GlyphKind.of("A.swsh"));
		assertEquals(GlyphKind.ORNAMENT, GlyphKind.of("ornament12"));
		assertEquals(GlyphKind.OTHER, GlyphKind.of(".notdef"));
		assertEquals(GlyphKind.OTHER, GlyphKind.of(""));
	}

	private static GlyphKind kind(String character) {
		List<GlyphEntry> found = chart.search(character);
		assertEquals(1, found.size(), character);
		return found.get(0).kind();
	}

	@Test
	void searchIsByCharacterCodeNumberAndName() {
		int star = face.glyph(0x2605);
		for (String words : List.of("\u2605", "U+2605", "2605", "u+2605", "#" + star, "black star", "STAR  black")) {
			assertTrue(chart.search(words).stream().anyMatch(e -> e.glyph() == star), words);
		}
		assertEquals(1, chart.search("U+2605").size());
		assertEquals("U+2605", chart.search("\u2605").get(0).label());
		assertEquals(chart.entries(), chart.search(" "));
		assertEquals(List.of(), chart.search("no such glyph"));
		assertFalse(chart.search("eacute").isEmpty(), "by the font's own name");
	}

	@Test
	void outlineIsInMillimetres() {
		GlyphEntry capital = chart.search("H").get(0);
		assertEquals(12, chart.outline(capital, 12).bounds().height(), 1e-9);
		assertEquals(0, chart.outline(capital, 12).bounds().maxY(), 1e-9);
		assertTrue(chart.outline(chart.search("U+0020").get(0), 12).isEmpty());
	}

	@Test
	void featuresOfTheFaceAreListed() {
		assertTrue(face.features().containsAll(List.of("kern", "liga", "init", "fina", "medi", "mark")));
		assertEquals(face.features().stream().sorted().distinct().toList(), face.features());
	}
}
