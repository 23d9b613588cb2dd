package org.frisket.export.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;

import javax.imageio.ImageIO;

import org.frisket.export.Handoff;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.options.OptionValues;
import org.frisket.model.Alignment;
import org.frisket.model.Job;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.prepare.PreparedJob;
import org.frisket.testkit.SampleJobs;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The file as an independent renderer sees it: librsvg, by Debian's rsvg-convert. */
class SvgReadBackTest {

	private static final Path RENDERER = Path.of("/usr/bin/rsvg-convert");
	private static final int PIXELS_PER_MM = 10;

	@TempDir
	private Path folder;

	@Test
	void renderedAreaOfLetteringIsTheRegionsArea() throws Exception {
		Job job = new Composition("Harbour Lane & Co", SampleJobs.face("DejaVu Serif"), 25, Alignment.LEFT,
				OptionalDouble.of(0.3), List.of(), OperationKind.CUT).toJob();
		assertSameArea(job);
	}

	@Test
	void renderedAreaOfAMatIsTheRegionsArea() throws Exception {
		Job job = new Composition("Ahoy", SampleJobs.face("Liberation Sans Bold"), 25, Alignment.LEFT,
				OptionalDouble.empty(), List.of(4.0), OperationKind.CUT).toJob();
		job.getLayers().get(1).setVisible(false);
		assertSameArea(job);
	}

	@Test
	void circleOfHalfADecimetreHasItsArea() throws Exception {
		// pi r^2 with r = 25
		Job job = SampleJobs.outline("M0 0A25 25 0 0 1 50 0A25 25 0 0 1 0 0Z", OperationKind.CUT);
		assertEquals(Math.PI * 625, blackMm2(SampleJobs.prepared(job)), 2);
	}

	private void assertSameArea(Job job) throws Exception {
		PreparedJob prepared = SampleJobs.prepared(job);
		double expected = prepared.layers().stream().filter(layer -> layer.layer().isVisible())
				.flatMap(layer -> layer.elements().stream()).mapToDouble(element -> element.region().area()).sum();
		assertEquals(expected, blackMm2(prepared), expected * 0.002);
	}

	/** Area by counting ink: filled black, without strokes. */
	private double blackMm2(PreparedJob job) throws Exception {
		assumeTrue(Files.isExecutable(RENDERER), "rsvg-convert is not installed");
		SvgExporter exporter = new SvgExporter();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		exporter.export(Handoff.of(job), OptionValues.of(exporter.options(), Map.of()), Monitor.NONE, out);
		String text = out.toString(StandardCharsets.UTF_8).replaceAll("stroke=\"#[^\"]*\"", "stroke=\"none\"")
				.replaceAll("fill=\"#[^\"]*\"", "fill=\"black\"");
		Path svg = Files.writeString(folder.resolve("in.svg"), text);
		Path png = folder.resolve("out.png");
		Process renderer = new ProcessBuilder(RENDERER.toString(), "--dpi-x", "254", "--dpi-y", "254",
				"--background-color", "white", "--output", png.toString(), svg.toString()).inheritIO().start();
		assertTrue(renderer.waitFor(60, TimeUnit.SECONDS));
		assertEquals(0, renderer.exitValue());
		BufferedImage image = ImageIO.read(png.toFile());
		double ink = 0;
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				ink += 1 - (image.getRGB(x, y) & 0xff) / 255.0;
			}
		}
		return ink / (PIXELS_PER_MM * PIXELS_PER_MM);
	}
}
