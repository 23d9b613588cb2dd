package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The {@code hb-shape} of Debian's libharfbuzz-bin: another build and another version of HarfBuzz. */
final class HbShape {

	private static final Path TOOL = Path.of("/usr/bin/hb-shape");

	/**
	 * A glyph in font units, y down, the pen having moved from the start of its run.
	 *
	 * @param cluster of the text in UTF-16
	 */
	record Glyph(long glyph, long cluster, long x, long y, long advance) {
	}

	private HbShape() {
	}

	/** One process for all lines of one direction. */
	static List<List<Glyph>> shape(Path font, List<String> lines, boolean rightToLeft, String features, String axes,
			Path scratch) throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hb-shape is not installed");
		Path file = Files.writeString(scratch.resolve("lines"), String.join("\n", lines) + "\n");
		Process process = new ProcessBuilder(TOOL.toString(), "--output-format=json", "--no-glyph-names",
				"--language=und", "--direction=" + (rightToLeft ? "rtl" : "ltr"), "--features=" + features,
				"--variations=" + axes, "--text-file=" + file, font.toString())
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		List<String> answers = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.toList();
		assertEquals(0, process.waitFor());
		assertEquals(lines.size(), answers.size());
		List<List<Glyph>> glyphs = new ArrayList<>();
		for (int i = 0; i < lines.size(); i++) {
			glyphs.add(glyphs((List<?>) Json.read(answers.get(i)), lines.get(i)));
		}
		return glyphs;
	}

	private static List<Glyph> glyphs(List<?> answer, String line) {
		List<Glyph> glyphs = new ArrayList<>();
		long pen = 0;
		for (Object item : answer) {
			Map<?, ?> map = (Map<?, ?>) item;
			// the tool counts characters, not UTF-16
			int cluster = line.offsetByCodePoints(0, (int) number(map, "cl"));
			glyphs.add(new Glyph(number(map, "g"), cluster, pen + number(map, "dx"), 0 - number(map, "dy"),
					number(map, "ax")));
			pen += number(map, "ax");
		}
		return glyphs;
	}

	private static long number(Map<?, ?> map, String key) {
		return (Long) map.get(key);
	}
}
