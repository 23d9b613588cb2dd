package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Shaping against the {@code hb-shape} of Debian's libharfbuzz-bin, another build and another version of HarfBuzz. */
class ShapingAgainstHbShapeTest {

	private static final Path TOOL = Path.of("/usr/bin/hb-shape");
	private static final Pattern GLYPH = Pattern.compile("(\\d+)=(\\d+)(?:@(-?\\d+),(-?\\d+))?\\+(-?\\d+)");

	private static final List<String> TEXTS = List.of("Harbour Lane", "AVATAR", "To Yo. We, Ty; P. L'", "office fjord",
			"fi fl ffi ffl ff", "1884 & 2026 (1/2)", "\u00C5ngstr\u00F6m \u00E9tude na\u00EFve",
			"a\u0301e\u0308q\u0308", "Wir \u2014 \u201Cquote\u201D", "Th st ct sp", "MILLIMETRE", "wijzigen",
			"r\u00E9sum\u00E9 \u0141\u00F3d\u017A",
			"\u041F\u0440\u0438\u0432\u0435\u0442", "\u039A\u03B1\u03BB\u03B7\u03BC\u03AD\u03C1\u03B1",
			"\u05E9\u05DC\u05D5\u05DD", "\u0633\u0644\u0627\u0645", "\u0645\u064F\u062D\u064E\u0645\u0651\u062F",
			"x  y", "Qu\u2019il vive!");

	@TempDir
	Path folder;

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DEJAVU_SERIF, Fonts.DANCING, Fonts.LOBSTER, Fonts.KAUSHAN,
			Fonts.SLAB })
	void glyphsAndPlacesAgree(String font) throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hb-shape is not installed");
		Path path = Fonts.path(font);
		FontFace face = FontFace.read(path);
		for (boolean plain : new boolean[] { false, true }) {
			List<String> lines = shapeOutside(path, plain);
			for (int i = 0; i < TEXTS.size(); i++) {
				String text = TEXTS.get(i);
				assertEquals(expected(lines.get(i)), actual(face, text, plain),
						() -> text + " in " + face + (plain ? " without kerning and ligatures" : ""));
			}
		}
	}

	private List<String> shapeOutside(Path font, boolean plain) throws Exception {
		Path texts = folder.resolve("texts");
		Files.writeString(texts, String.join("\n", TEXTS) + "\n");
		ProcessBuilder builder = new ProcessBuilder(TOOL.toString(), "--no-glyph-names", "--language=und",
				"--features=" + (plain ? "-kern,-liga,-clig" : ""), "--text-file=" + texts, font.toString());
		Process process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.toList();
		assertEquals(0, process.waitFor());
		assertEquals(TEXTS.size(), lines.size());
		return lines;
	}

	/** Glyph, cluster, x and y (down) of the glyph, advance. */
	private static List<List<Long>> expected(String line) {
		List<List<Long>> glyphs = new ArrayList<>();
		long pen = 0;
		for (Matcher m = GLYPH.matcher(line); m.find();) {
			long dx = m.group(3) == null ? 0 : Long.parseLong(m.group(3));
			long dy = m.group(4) == null ? 0 : Long.parseLong(m.group(4));
			long advance = Long.parseLong(m.group(5));
			glyphs.add(List.of(Long.parseLong(m.group(1)), Long.parseLong(m.group(2)), pen + dx, -dy, advance));
			pen += advance;
		}
		return glyphs;
	}

	private static List<List<Long>> actual(FontFace face, String text, boolean plain) {
		char[] chars = text.toCharArray();
		List<List<Long>> glyphs = new ArrayList<>();
		List<Run> runs = Run.of(chars);
		assertEquals(1, runs.size(), text);
		for (PlacedGlyph glyph : face.engine().shape(chars, runs.get(0), new Shaping(!plain, !plain, ""))) {
			glyphs.add(List.of((long) glyph.glyph(), (long) glyph.cluster(), Math.round(glyph.x()),
					Math.round(glyph.y()), Math.round(glyph.advance())));
		}
		return glyphs;
	}
}
