package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.frisket.typography.internal.shape.PlacedGlyph;
import org.frisket.typography.internal.shape.Run;
import org.frisket.typography.internal.shape.Shaping;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Pair kerning and the heights of letters, as fontTools (Debian's python3-fonttools) reads them from the tables of the
 * fonts: a reader in another language that shapes nothing.
 */
class KerningAgainstFontToolsTest {

	private static final Path PYTHON = Path.of("/usr/bin/python3");
	private static final Path FONT_TOOLS = Path.of("/usr/lib/python3/dist-packages/fontTools");
	private static final List<String> FONTS = List.of(Fonts.DEJAVU_SANS, Fonts.DEJAVU_SERIF,
			"truetype/dejavu/DejaVuSans-Bold.ttf", Fonts.DANCING, Fonts.LOBSTER, Fonts.KAUSHAN, Fonts.SLAB, Fonts.BEBAS);
	/** Nothing but kerning is to change a pair of letters. */
	private static final String ONLY_KERNING = "-liga,-clig,-calt,-rlig,-ccmp,-locl";

	/** @param kerning of two glyphs by their numbers */
	private record Facts(Map<Character, Double> heights, Map<List<Integer>, Integer> kerning) {
	}

	@TempDir
	Path folder;

	private Map<Path, Facts> read(List<Path> fonts) throws Exception {
		assumeTrue(Files.isExecutable(PYTHON) && Files.isDirectory(FONT_TOOLS), "python3-fonttools is not installed");
		Path script = folder.resolve("font_facts.py");
		try (InputStream source = getClass().getResourceAsStream("font_facts.py")) {
			Files.copy(source, script);
		}
		List<String> command = new ArrayList<>(List.of(PYTHON.toString(), script.toString()));
		fonts.forEach(font -> command.add(font.toString()));
		Process process = new ProcessBuilder(command).redirectError(folder.resolve("errors").toFile()).start();
		Map<Path, Facts> facts = new LinkedHashMap<>();
		Facts current = null;
		for (String line : new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
			String[] words = line.split(" ");
			switch (words[0]) {
			case "font" -> facts.put(Path.of(words[1]), current = new Facts(new LinkedHashMap<>(), new LinkedHashMap<>()));
			case "height" -> current.heights().put(words[1].charAt(0), Double.valueOf(words[2]));
			default -> current.kerning().put(List.of(Integer.valueOf(words[1]), Integer.valueOf(words[2])),
					Integer.valueOf(words[3]));
			}
		}
		assertEquals(0, process.waitFor(), () -> "see " + folder.resolve("errors"));
		return facts;
	}

	@Test
	void pairsAreKernedAndHeightsMeasuredAsTheFontHasThem() throws Exception {
		List<Path> fonts = FONTS.stream().map(Fonts::path).toList();
		Map<Path, Facts> facts = read(fonts);
		assertEquals(fonts, List.copyOf(facts.keySet()));
		for (Map.Entry<Path, Facts> font : facts.entrySet()) {
			FontFace face = FontFace.read(font.getKey());
			assertEquals(font.getValue().heights().get('H'), face.capHeight(), 0.51, font.getKey().toString());
			assertEquals(font.getValue().heights().get('x'), face.xHeight(), 0.51, font.getKey().toString());
			comparePairs(face, font.getValue().kerning());
		}
	}

	private static void comparePairs(FontFace face, Map<List<Integer>, Integer> kerning) {
		int kerned = 0;
		String letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz";
		for (char left : letters.toCharArray()) {
			for (char right : letters.toCharArray()) {
				int expected = kerning.getOrDefault(List.of(face.glyph(left), face.glyph(right)), 0);
				double alone = face.advance(face.glyph(left)) + face.advance(face.glyph(right));
				String pair = left + "" + right + " in " + face;
				assertEquals(alone + expected, width(face, left, right, true), 0, pair);
				assertEquals(alone, width(face, left, right, false), 0, pair);
				kerned += expected == 0 ? 0 : 1;
			}
		}
		assertTrue(kerned > 50, kerned + " pairs are kerned in " + face);
	}

	private static double width(FontFace face, char left, char right, boolean kerning) {
		char[] pair = { left, right };
		return face.engine().shape(pair, new Run(0, 2, false),
				new Shaping(kerning, false, "", FeatureList.parse(ONLY_KERNING), false)).stream()
				.mapToDouble(PlacedGlyph::advance).sum();
	}
}
