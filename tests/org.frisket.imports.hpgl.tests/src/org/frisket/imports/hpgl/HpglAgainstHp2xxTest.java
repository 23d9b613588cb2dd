package org.frisket.imports.hpgl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.imports.UnreadableArtException;
import org.frisket.testkit.Mutants;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random plots, drawn by an interpreter that knows nothing of ours: Debian's hp2xx, which writes lines as DXF. */
class HpglAgainstHp2xxTest {

	private static final Path TOOL = Path.of("/usr/bin/hp2xx");

	/** What was drawn: how long all lines are together, and the box round them. */
	private record Drawn(double length, Bounds bounds) {
	}

	private static String plot(Random random) {
		StringBuilder text = new StringBuilder("IN;SP1;PA;PU0,0;PD200,0;PU");
		for (int i = 0; i < 12; i++) {
			int x = 4000 + random.nextInt(4000);
			int y = 4000 + random.nextInt(4000);
			text.append(";PA;PU").append(x).append(',').append(y);
			switch (i % 6) {
			case 0 -> text.append(";PD").append(y).append(',').append(x).append(',').append(x / 2).append(',').append(y / 3);
			case 1 -> text.append(";PR;PD").append(random.nextInt(500)).append(",-").append(random.nextInt(500))
					.append(",-400,250");
			case 2 -> text.append(";CI").append(100 + random.nextInt(900)).append(",1");
			case 3 -> text.append(";PD;AA").append(x - 500).append(',').append(y + random.nextInt(300)).append(',')
					.append(random.nextInt(700) - 350).append(",1");
			case 4 -> text.append(";PD;AR300,-").append(random.nextInt(300)).append(',').append(20 + random.nextInt(300))
					.append(",1");
			default -> text.append(";EA").append(x + 300).append(',').append(y + 200);
			}
		}
		return text.append(";PU;SP0;").toString();
	}

	private static Drawn ours(String plot) throws Exception {
		List<Outline> outlines = HpglImporterTest.outlines(HpglImporterTest.read(plot.getBytes(StandardCharsets.ISO_8859_1)));
		double length = 0;
		Bounds bounds = Bounds.EMPTY;
		for (Outline outline : outlines) {
			length += outline.contours().stream().mapToDouble(Contour::length).sum();
			bounds = bounds.with(outline.bounds());
		}
		return new Drawn(length, bounds);
	}

	private static Drawn theirs(String plot, Path folder) throws Exception {
		Path in = folder.resolve("plot.plt");
		Path out = folder.resolve("plot.dxf");
		Files.writeString(in, plot, StandardCharsets.ISO_8859_1);
		Process process = new ProcessBuilder(TOOL.toString(), "-q", "-t", "-m", "dxf", "-f", out.toString(), in.toString())
				.redirectErrorStream(true).start();
		process.getInputStream().readAllBytes();
		assertEquals(0, process.waitFor());
		List<String> lines = Files.readAllLines(out, StandardCharsets.ISO_8859_1);
		double[] line = new double[4];
		double length = 0;
		Bounds bounds = Bounds.EMPTY;
		boolean entities = false;
		for (int i = 0; i + 1 < lines.size(); i += 2) {
			String value = lines.get(i + 1).strip();
			entities |= value.equals("ENTITIES");
			int at = List.of("10", "20", "11", "21").indexOf(lines.get(i).strip());
			if (entities && at >= 0) {
				line[at] = Double.parseDouble(value);
				if (at == 3) {
					Point from = new Point(line[0], -line[1]);
					Point to = new Point(line[2], -line[3]);
					length += from.distance(to);
					bounds = bounds.with(from).with(to);
				}
			}
		}
		return new Drawn(length, bounds);
	}

	/** Either curves come out of a damaged plot, or a reason; never anything else. */
	@Test
	void mutantsOfPlotsNeitherCrashNorHang() throws Exception {
		Random random = new Random(20_261_129);
		int read = 0;
		int refused = 0;
		for (int i = 0; i < 1_200; i++) {
			byte[] mutant = Mutants.of(plot(random).getBytes(StandardCharsets.ISO_8859_1), random);
			try {
				for (Outline outline : HpglImporterTest.outlines(HpglImporterTest.read(mutant))) {
					assertTrue(Double.isFinite(outline.bounds().width()));
				}
				read++;
			} catch (UnreadableArtException e) {
				assertTrue(e.getMessage().startsWith("tag.plt"), e.getMessage());
				refused++;
			}
		}
		assertTrue(read > 200 && refused > 200, read + " read, " + refused + " refused");
	}

	@Test
	void plotsAreDrawnAlike(@TempDir Path folder) throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hp2xx is not installed");
		Random random = new Random(11);
		for (int i = 0; i < 30; i++) {
			String plot = plot(random);
			Drawn expected = theirs(plot, folder);
			Drawn found = ours(plot);
			assertTrue(expected.length() > 100, "hp2xx drew nothing");
			assertEquals(expected.length(), found.length(), expected.length() * 1e-3, plot);
			assertEquals(expected.bounds().width(), found.bounds().width(), 0.06, plot);
			assertEquals(expected.bounds().height(), found.bounds().height(), 0.06, plot);
			assertEquals(expected.bounds().minX(), found.bounds().minX(), 0.06, plot);
		}
	}
}
