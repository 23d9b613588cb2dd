package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.frisket.typography.HbShape.Glyph;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Glyphs, advances and offsets of every run of many texts in many fonts, against another version of the shaper. */
class ShapingAgainstHbShapeTest {

	private static final String INTER = "truetype/inter-vf/Inter-roman.var.ttf";

	@TempDir
	Path folder;

	/** A run as a line of its own for the tool. */
	private record Line(String text, Run run) {

		String alone() {
			return text.substring(run.start(), run.limit());
		}
	}

	private static List<Line> lines(List<String> texts) {
		List<Line> lines = new ArrayList<>();
		for (String text : texts) {
			List<Run> runs = Run.of(text.toCharArray());
			assertEquals(text.length(), runs.stream().mapToInt(run -> run.limit() - run.start()).sum());
			runs.forEach(run -> lines.add(new Line(text, run)));
		}
		return lines;
	}

	@Test
	void thereAreTextsOfEveryKind() {
		assertTrue(ShapingTexts.all().size() >= 60, ShapingTexts.all().size() + " texts");
		assertTrue(lines(ShapingTexts.MIXED).size() > 2 * ShapingTexts.MIXED.size());
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, "truetype/dejavu/DejaVuSans-Bold.ttf",
			"truetype/dejavu/DejaVuSansMono.ttf", Fonts.DEJAVU_SERIF, Fonts.DANCING, Fonts.LOBSTER, Fonts.KAUSHAN,
			Fonts.SLAB, Fonts.BEBAS, Fonts.SYMBOLA, INTER, "truetype/lohit-devanagari/Lohit-Devanagari.ttf" })
	void glyphsAndPlacesAgree(String font) throws Exception {
		Path path = Fonts.path(font);
		FontFace face = FontFace.read(path);
		compare(path, face, ShapingTexts.all(), "", 0);
		compare(path, face, ShapingTexts.LATIN, "-kern,-liga,-clig", 0);
		compare(path, face, ShapingTexts.LATIN, "smcp,onum", 0);
	}

	/** Between its masters, what is rounded when differs from version to version of the shaper. */
	@ParameterizedTest
	@CsvSource(delimiter = ';', value = { "wght=100", "wght=650", "wght=900" })
	void axesAgree(String axes) throws Exception {
		Path path = Fonts.path(INTER);
		FontFace face = FontFace.read(path).at(AxisSettings.parse(axes));
		assertTrue(!face.settings().isEmpty());
		compare(path, face, ShapingTexts.LATIN, "", 1);
		compare(path, face, ShapingTexts.GREEK_AND_CYRILLIC, "tnum,-kern", 1);
	}

	/** @param slack in font units of each advance */
	private void compare(Path font, FontFace face, List<String> texts, String features, long slack) throws Exception {
		Shaping shaping = new Shaping(true, true, "", FeatureList.parse(features), false);
		for (boolean rightToLeft : new boolean[] { false, true }) {
			List<Line> lines = lines(texts).stream().filter(line -> line.run().rightToLeft() == rightToLeft).toList();
			if (lines.isEmpty()) {
				continue;
			}
			List<List<Glyph>> outside = HbShape.shape(font, lines.stream().map(Line::alone).toList(), rightToLeft,
					features, face.settings().toString(), folder);
			for (int i = 0; i < lines.size(); i++) {
				Line line = lines.get(i);
				List<Glyph> ours = ours(face, line, shaping);
				List<Glyph> theirs = outside.get(i);
				compare(theirs, ours, slack, () -> "“" + line.alone() + "” in " + face + " " + features + ": " + theirs
						+ " and " + ours);
			}
		}
	}

	/**
	 * Where the font says nothing of a mark, the shaper puts it in its place by its size; half a unit is rounded there
	 * by the tool and kept by us.
	 */
	private static void compare(List<Glyph> theirs, List<Glyph> ours, long slack, Supplier<String> where) {
		assertEquals(theirs.size(), ours.size(), where);
		for (int g = 0; g < ours.size(); g++) {
			Glyph expected = theirs.get(g);
			Glyph actual = ours.get(g);
			long mark = expected.advance() == 0 ? 1 : 0;
			assertEquals(expected.glyph(), actual.glyph(), where);
			assertEquals(expected.cluster(), actual.cluster(), where);
			assertTrue(Math.abs(expected.advance() - actual.advance()) <= slack, where);
			assertTrue(Math.abs(expected.x() - actual.x()) <= slack * (g + 1) + mark, where);
			assertTrue(Math.abs(expected.y() - actual.y()) <= slack + mark, where);
		}
	}

	private static List<Glyph> ours(FontFace face, Line line, Shaping shaping) {
		List<Glyph> glyphs = new ArrayList<>();
		for (PlacedGlyph glyph : face.engine().shape(line.text().toCharArray(), line.run(), shaping)) {
			glyphs.add(new Glyph(glyph.glyph(), glyph.cluster() - line.run().start(), Math.round(glyph.x()),
					Math.round(glyph.y()), Math.round(glyph.advance())));
		}
		return glyphs;
	}
}
