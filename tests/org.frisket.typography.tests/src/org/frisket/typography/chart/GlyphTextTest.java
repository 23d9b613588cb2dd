package org.frisket.typography.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FeatureList;
import org.frisket.typography.Letter;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontLibrary;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The text that comes out as a glyph, and the kinds of glyphs that can be looked at. */
class GlyphTextTest {

	private static GlyphChart chart;

	@BeforeAll
	static void openFont() throws Exception {
		chart = GlyphChart.of(new FontLibrary(List.of(new EmbeddedFontSource())).find("DejaVu Sans"));
	}

	private static GlyphEntry named(String name) {
		return chart.entries().stream().filter(entry -> entry.name().equals(name)).findFirst().orElseThrow();
	}

	private static void assertMakes(GlyphText text, GlyphEntry entry) {
		List<Letter> letters = TextSetter.set(text.text(), chart.face(),
				Setting.ofCapHeight(10).withFeatures(text.features()), Monitor.NONE).letters();
		assertEquals(List.of(List.of(entry.glyph())), letters.stream().map(Letter::glyphs).toList(), entry.toString());
	}

	@Test
	void characterIsItself() {
		GlyphEntry heart = chart.search("U+2767").get(0);
		assertEquals(Optional.of(new GlyphText("\u2767", FeatureList.NONE)),
				GlyphText.of(chart, heart, Monitor.NONE));
	}

	@Test
	void glyphsWithoutCharacterThatATextReachesAreFound() {
		List<GlyphEntry> lone = GlyphFilter.LONE.of(chart.entries());
		int reached = 0;
		int tried = 0;
		// until there is one of both kinds: a glyph that no text reaches is sought with every character
		for (int i = 0; i < lone.size() && tried < 40 && (reached == 0 || reached == tried); i += 7) {
			GlyphEntry entry = lone.get(i);
			if (!chart.outline(entry, 1).isEmpty()) {
				tried++;
				Optional<GlyphText> text = GlyphText.of(chart, entry, Monitor.NONE);
				text.ifPresent(found -> assertMakes(found, entry));
				reached += text.isPresent() ? 1 : 0;
			}
		}
		assertTrue(reached > 0 && reached < tried, reached + " of " + tried);
	}

	@Test
	void blankAndStoppedSearchFindNothing() {
		assertEquals(Optional.empty(), GlyphText.of(chart, chart.search("U+0020").get(0), Monitor.NONE));
		assertEquals(Optional.empty(), GlyphText.of(chart, named(".notdef"), Monitor.NONE));
		assertThrows(CancellationException.class,
				() -> GlyphText.of(chart, chart.search("U+2767").get(0), () -> true));
	}

	@Test
	void filtersPartTheGlyphs() {
		List<GlyphEntry> all = chart.entries();
		assertEquals(all, GlyphFilter.ALL.of(all));
		List<GlyphEntry> characters = GlyphFilter.CHARACTERS.of(all);
		List<GlyphEntry> lone = GlyphFilter.LONE.of(all);
		assertEquals(all.size(), characters.size() + lone.size());
		assertTrue(!lone.isEmpty() && lone.stream().allMatch(entry -> entry.characters().isEmpty()));
		List<GlyphEntry> ornaments = GlyphFilter.ORNAMENTS.of(all);
		assertTrue(ornaments.containsAll(List.of(chart.search("U+2767").get(0), chart.search("U+2605").get(0))));
		assertTrue(ornaments.stream().noneMatch(entry -> entry.characters().contains((int) 'A')));
		assertTrue(ornaments.size() < all.size() / 2);
	}
}
