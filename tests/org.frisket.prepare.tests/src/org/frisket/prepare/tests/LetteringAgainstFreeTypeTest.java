package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

import javax.imageio.ImageIO;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.typography.FontFace;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** The area of set lettering against the ink that FreeType lays down, drawn by Debian's hb-view. */
class LetteringAgainstFreeTypeTest {

	private static final Path TOOL = Path.of("/usr/bin/hb-view");
	private static final int PIXELS_PER_EM = 300;

	@TempDir
	private Path folder;

	@TestFactory
	List<DynamicTest> inkOfFreeTypeIsTheRegionsArea() {
		List<DynamicTest> tests = new ArrayList<>();
		for (String font : List.of("opentype/lobster/lobster.otf", "opentype/dancingscript/DancingScript-Regular.otf",
				"opentype/roboto/slab/RobotoSlab-Bold.otf", "truetype/dejavu/DejaVuSerif.ttf")) {
			for (String text : List.of("Harbour Lane", "AVATo office", "8 & 9%")) {
				tests.add(DynamicTest.dynamicTest(font + ", " + text,
						() -> check(Path.of("/usr/share/fonts").resolve(font), text)));
			}
		}
		return tests;
	}

	private void check(Path font, String text) throws Exception {
		assumeTrue(Files.isExecutable(TOOL) && Files.isReadable(font), "hb-view or the font is not installed");
		SetText set = TextSetter.set(text, FontFace.read(font), Setting.ofCapHeight(40), Monitor.NONE);
		Region region = new OutlineCleaner().clean(set.outline(), FillRule.NON_ZERO, Tolerance.DEFAULT, Monitor.NONE)
				.region();
		double mmPerPixel = set.scale() * set.face().unitsPerEm() / PIXELS_PER_EM;
		assertEquals(ink(font, text) * mmPerPixel * mmPerPixel, region.area(), 0.004 * region.area());
	}

	/** In pixels, parts of them counted in part. */
	private double ink(Path font, String text) throws Exception {
		Path picture = folder.resolve("ink.png");
		Process tool = new ProcessBuilder(TOOL.toString(), "--font-file=" + font, "--text=" + text,
				"--font-size=" + PIXELS_PER_EM, "--margin=60", "--font-funcs=ft", "--output-format=png",
				"--output-file=" + picture).inheritIO().start();
		assertTrue(tool.waitFor(60, TimeUnit.SECONDS));
		assertEquals(0, tool.exitValue());
		BufferedImage image = ImageIO.read(picture.toFile());
		double ink = 0;
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				ink += 1 - image.getRaster().getSample(x, y, 0) / 255.0;
			}
		}
		return ink;
	}
}
