package org.frisket.print.contour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.PathData;
import org.frisket.geometry.Transform;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Resolution;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files written by librsvg's {@code rsvg-convert}, a renderer and a writer of PNG that are not ours. */
class RsvgPicturesTest {

	private static final String TAG = "M6 4H26A4 4 0 0 1 30 8V12.4L36.7 16.2L30 20V24A4 4 0 0 1 26 28H6A4 4 0 0 1 2 24V8"
			+ "A4 4 0 0 1 6 4ZM9 16A3 3 0 0 0 15 16A3 3 0 0 0 9 16Z";

	private static final Path RENDERER = Path.of("/usr/bin/rsvg-convert");

	@TempDir
	private Path folder;

	@ParameterizedTest
	@CsvSource({ "150,", "300,", "600,", "300,#e8e2d0" })
	void tagIsFoundAgain(int dpi, String background) throws Exception {
		assumeTrue(Files.isExecutable(RENDERER), "librsvg2-bin is not installed");
		Path svg = folder.resolve("tag.svg");
		Path png = folder.resolve("tag.png");
		Files.writeString(svg, """
				<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="32mm" viewBox="0 0 40 32">
				<g transform="rotate(7 20 16)"><path fill="#183848" d="%s"/></g></svg>
				""".formatted(TAG));
		double scale = dpi / 25.4;
		render(svg, png, String.format(Locale.ROOT, "%d", Math.round(40 * scale)),
				String.format(Locale.ROOT, "%d", Math.round(32 * scale)), background == null ? "none" : background);
		PictureFile picture = PictureFile.of(png);
		Resolution resolution = new Resolution(picture.width() * 25.4 / 40, picture.height() * 25.4 / 32,
				Resolution.Source.GIVEN);
		TracedContour traced = ContourTracer.trace(picture.pixels(Monitor.NONE), resolution,
				ContourOptions.USUAL.holes(HoleRule.KEEP), Monitor.NONE);
		double angle = Math.toRadians(7);
		List<Contour> truth = PathData.parse(TAG).transformed(new Transform(Math.cos(angle),
				Math.sin(angle), -Math.sin(angle), Math.cos(angle), 20 - 20 * Math.cos(angle) + 16 * Math.sin(angle),
				16 - 20 * Math.sin(angle) - 16 * Math.cos(angle))).contours();
		Accuracy accuracy = Accuracy.of(traced.region(), truth, 25.4 / dpi);
		assertEquals(background == null ? "transparent" : background, traced.backdrop().toString());
		assertEquals(2, traced.region().contours().size());
		String found = dpi + " dpi on " + background + ": " + accuracy + ", " + traced.region().nodeCount() + " nodes of "
				+ truth.stream().mapToInt(Contour::nodeCount).sum();
		assertTrue(accuracy.rms() < 0.2 && accuracy.hausdorff() < 1, found);
		assertTrue(Math.abs(accuracy.bias()) < 0.05, found);
		assertTrue(traced.region().nodeCount() < 40, found);
	}

	private static void render(Path svg, Path png, String width, String height, String background)
			throws IOException, InterruptedException {
		Process process = new ProcessBuilder(RENDERER.toString(), "--width", width, "--height", height, "--background-color",
				background, "--output", png.toString(), svg.toString()).inheritIO().start();
		assertEquals(0, process.waitFor());
	}
}
