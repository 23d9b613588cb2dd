package org.frisket.typography;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

/** Names that fonts give their stylistic sets and character variants. */
class FeatureNamesTest {

	private static final Path PYTHON = Path.of("/usr/bin/python3");
	private static final Path FONT_TOOLS = Path.of("/usr/lib/python3/dist-packages/fontTools");
	private static final String NAMED = "truetype/inter-vf/Inter-roman.var.ttf";
	private static final String SCRIPT = """
			import sys
			from fontTools.ttLib import TTFont
			font = TTFont(sys.argv[1])
			for record in font['GSUB'].table.FeatureList.FeatureRecord:
			    params = record.Feature.FeatureParams
			    number = getattr(params, 'UINameID', None) or getattr(params, 'FeatUILabelNameID', None)
			    if number:
			        print(record.FeatureTag, font['name'].getDebugName(number))
			""";

	/** As fontTools (Debian's python3-fonttools) reads them. */
	@Test
	void namesAreThoseThatFontToolsReads() throws Exception {
		assumeTrue(Files.isExecutable(PYTHON) && Files.isDirectory(FONT_TOOLS), "python3-fonttools is not installed");
		Path font = Fonts.path(NAMED);
		Process process = new ProcessBuilder(PYTHON.toString(), "-c", SCRIPT, font.toString()).start();
		Map<String, String> expected = new TreeMap<>();
		new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).lines()
				.forEach(line -> expected.put(line.substring(0, 4), line.substring(5)));
		assertEquals(0, process.waitFor());
		assertTrue(expected.size() > 10, expected.toString());
		assertEquals(expected, FontFace.read(font).featureNames());
	}

	@Test
	void fontThatNamesNoneHasNone() throws Exception {
		assertEquals(Map.of(), Fonts.sans().featureNames());
	}

	/** Whatever the table says, reading it ends, and without an exception. */
	@Test
	void damagedTableIsReadAsFarAsItGoes() throws Exception {
		FontSurgery whole = new FontSurgery(Files.readAllBytes(Fonts.path(NAMED)));
		byte[] table = whole.table("GSUB");
		int list = (table[6] & 0xff) << 8 | table[7] & 0xff;
		int count = (table[list] & 0xff) << 8 | table[list + 1] & 0xff;
		Random random = new Random(7);
		for (int round = 0; round < 60; round++) {
			byte[] damaged = table.clone();
			for (int i = 0; i < 12; i++) {
				damaged[list + random.nextInt(2 + 6 * count + 40)] = (byte) random.nextInt();
			}
			byte[] font = new FontSurgery(whole.font()).with("GSUB",
					round % 2 == 0 ? damaged : Arrays.copyOf(damaged, list + 2 + random.nextInt(6 * count))).font();
			FontFace.read(font, "damaged").featureNames().values().forEach(name -> assertFalse(name.isBlank()));
		}
	}
}
