package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.frisket.geometry.Monitor;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Features, axes, joining scripts and lines that run down, against the {@code hb-shape} of libharfbuzz-bin. */
class ShapingOfFeaturesTest {

	private static final Path TOOL = Path.of("/usr/bin/hb-shape");
	private static final Pattern GLYPH = Pattern
			.compile("(\\d+)=(\\d+)(?:@(-?\\d+),(-?\\d+))?\\+(-?\\d+)(?:,(-?\\d+))?");
	private static final String DEVANAGARI = "truetype/lohit-devanagari/Lohit-Devanagari.ttf";
	private static final String VARIABLE = "truetype/inter-vf/Inter-roman.var.ttf";

	private static final List<String> LATIN = List.of("Harbour Lane 1884", "AVATAR To Yo", "office fjord ffi",
			"a\u0301e\u0308q\u0308", "Wir \u2014 \u201Cquote\u201D 1/2", "Th st ct sp");
	private static final List<String> ARABIC = List.of("\u0633\u0644\u0627\u0645",
			"\u0645\u064F\u062D\u064E\u0645\u0651\u062F",
			"\u0627\u0644\u0645\u064A\u0646\u0627\u0621", "\u0628\u0650\u0633\u0652\u0645\u0650",
			"\u0644\u0627 \u0644\u0623",
			"\u06A9\u0634\u062A\u06CC", "\u0639\u0628\u0651\u0627\u0631\u0629");
	private static final List<String> INDIC = List.of("\u0928\u092E\u0938\u094D\u0924\u0947",
			"\u0915\u094D\u0937\u0924\u094D\u0930\u093F\u092F", "\u0939\u093F\u0928\u094D\u0926\u0940",
			"\u0936\u094D\u0930\u0940", "\u0930\u094D\u0915", "\u0928\u093E\u0935", "\u0915\u093F\u0924\u093E\u092C",
			"\u0926\u094D\u0935\u093E\u0930", "\u0930\u0942\u092A\u090F");

	@TempDir
	Path folder;

	@ParameterizedTest
	@ValueSource(strings = { "smcp", "-kern,-liga", "ss01", "onum,zero", "dlig", "frac", "salt=2", "aalt=1,-calt" })
	void featuresAreThoseAskedFor(String features) throws Exception {
		for (String font : List.of(Fonts.DEJAVU_SANS, Fonts.SLAB, Fonts.LOBSTER, Fonts.DANCING)) {
			compare(Fonts.path(font), LATIN, FeatureList.parse(features), AxisSettings.NONE, false);
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, "truetype/dejavu/DejaVuSans-Bold.ttf",
			"truetype/dejavu/DejaVuSansMono.ttf" })
	void arabicIsShaped(String font) throws Exception {
		compare(Fonts.path(font), ARABIC, FeatureList.NONE, AxisSettings.NONE, false);
		compare(Fonts.path(font), ARABIC, FeatureList.parse("-mark,-fina"), AxisSettings.NONE, false);
	}

	@Test
	void devanagariIsShaped() throws Exception {
		compare(Fonts.path(DEVANAGARI), INDIC, FeatureList.NONE, AxisSettings.NONE, false);
		// a vowel sign that is written before its letter belongs to the same cluster
		SetText set = TextSetter.set("\u0915\u093F\u0924", FontFace.read(Fonts.path(DEVANAGARI)),
				Setting.ofCapHeight(9), Monitor.NONE);
		assertEquals(List.of(0, 2), set.letters().stream().map(Letter::start).toList());
	}

	@ParameterizedTest
	@ValueSource(strings = { "wght=100", "wght=640", "wght=900" })
	void axesAreThoseAskedFor(String axes) throws Exception {
		Path font = Fonts.path(VARIABLE);
		compare(font, LATIN, FeatureList.NONE, AxisSettings.parse(axes), false);
		compare(font, LATIN, FeatureList.parse("tnum,-kern"), AxisSettings.parse(axes), false);
	}

	/** On TrueType outlines: for others, versions of HarfBuzz differ in the height from which letters hang. */
	@ParameterizedTest
	@ValueSource(strings = { Fonts.DEJAVU_SANS, Fonts.DEJAVU_SERIF, Fonts.SYMBOLA })
	void linesThatRunDownAreShaped(String font) throws Exception {
		compare(Fonts.path(font), List.of("Harbour", "a\u0301be\u0308", "\u3010\u6E2F\u3011\u3001", "OPEN 24"),
				FeatureList.NONE, AxisSettings.NONE, true);
	}

	private void compare(Path font, List<String> texts, FeatureList features, AxisSettings axes, boolean down)
			throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hb-shape is not installed");
		FontFace face = FontFace.read(font).at(axes);
		List<String> lines = shapeOutside(font, texts, features, axes, down);
		for (int i = 0; i < texts.size(); i++) {
			List<List<Long>> expected = expected(lines.get(i));
			assertTrue(!expected.isEmpty());
			String text = texts.get(i);
			List<List<Long>> actual = actual(face, text, features, down);
			assertEquals(expected.size(), actual.size(), () -> text + " in " + face);
			for (int g = 0; g < expected.size(); g++) {
				for (int k = 0; k < expected.get(g).size(); k++) {
					// rounding of places is to a unit in the tool, and differs where axes are between their masters
					long slack = k < 2 ? 0 : axes.isEmpty() ? 1 : 2 + g;
					assertEquals(expected.get(g).get(k), actual.get(g).get(k), slack, () -> text + " in " + face + " "
							+ features + ": " + expected + " and " + actual);
				}
			}
		}
	}

	private List<String> shapeOutside(Path font, List<String> texts, FeatureList features, AxisSettings axes,
			boolean down) throws Exception {
		Path file = folder.resolve("texts");
		Files.writeString(file, String.join("\n", texts) + "\n");
		List<String> command = new ArrayList<>(List.of(TOOL.toString(), "--no-glyph-names", "--language=und",
				"--features=" + features, "--variations=" + axes, "--text-file=" + file));
		if (down) {
			command.add("--direction=ttb");
		}
		command.add(font.toString());
		Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
		List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.toList();
		assertEquals(0, process.waitFor());
		assertEquals(texts.size(), lines.size());
		return lines;
	}

	/** Glyph, cluster, x and y (down) of the glyph, advance across. */
	private static List<List<Long>> expected(String line) {
		List<List<Long>> glyphs = new ArrayList<>();
		long pen = 0;
		long depth = 0;
		for (Matcher m = GLYPH.matcher(line); m.find();) {
			long dx = m.group(3) == null ? 0 : Long.parseLong(m.group(3));
			long dy = m.group(4) == null ? 0 : Long.parseLong(m.group(4));
			long advance = Long.parseLong(m.group(5));
			long down = m.group(6) == null ? 0 : -Long.parseLong(m.group(6));
			glyphs.add(List.of(Long.parseLong(m.group(1)), Long.parseLong(m.group(2)), pen + dx, depth - dy, advance));
			pen += advance;
			depth += down;
		}
		return glyphs;
	}

	private static List<List<Long>> actual(FontFace face, String text, FeatureList features, boolean down) {
		char[] chars = text.toCharArray();
		Run run = down ? new Run(0, chars.length, false) : new Run(0, chars.length, Run.of(chars).get(0).rightToLeft());
		List<List<Long>> glyphs = new ArrayList<>();
		for (PlacedGlyph glyph : face.engine().shape(chars, run, new Shaping(true, true, "", features, down))) {
			glyphs.add(List.of((long) glyph.glyph(), (long) glyph.cluster(), Math.round(glyph.x()),
					Math.round(glyph.y()), Math.round(glyph.advance())));
		}
		return glyphs;
	}
}
