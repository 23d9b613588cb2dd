package org.frisket.export.tests.hpgl;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import javax.imageio.ImageIO;

import org.frisket.export.Handoff;
import org.frisket.export.tests.Format;
import org.frisket.export.tests.Runs;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.model.Alignment;
import org.frisket.model.OperationKind;
import org.frisket.prepare.Composition;
import org.frisket.testkit.SampleJobs;
import org.frisket.toolpath.Stage;
import org.frisket.toolpath.Stroke;
import org.frisket.toolpath.track.Move;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plots as an interpreter draws them that knows nothing of ours: Debian's hp2xx. To it NR ends a page. */
class HpglAgainstHp2xxTest {

	private static final Path TOOL = Path.of("/usr/bin/hp2xx");
	private static final int DPI = 127;
	private static final double PIXELS_PER_MM = 5;

	@TempDir
	private Path folder;

	private record Line(Point from, Point to) {
	}

	private Path drawn(String mode, byte[] plot, String... more) throws IOException, InterruptedException {
		Path in = Files.write(folder.resolve("plot.plt"), plot);
		Path out = folder.resolve("plot." + mode);
		List<String> command = new ArrayList<>(List.of(TOOL.toString(), "-q", "-t", "-m", mode));
		command.addAll(List.of(more));
		command.addAll(List.of("-f", out.toString(), in.toString()));
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes());
		assertEquals(0, process.waitFor(), said);
		return out;
	}

	/** The lines it makes of a plot, in mm, as a DXF has them. */
	private List<Line> lines(byte[] plot) throws IOException, InterruptedException {
		List<String> groups = Files.readAllLines(drawn("dxf", plot));
		double[] line = new double[4];
		List<Line> lines = new ArrayList<>();
		boolean entities = false;
		for (int i = 0; i + 1 < groups.size(); i += 2) {
			entities |= groups.get(i + 1).strip().equals("ENTITIES");
			int at = List.of("10", "20", "11", "21").indexOf(groups.get(i).strip());
			if (entities && at >= 0) {
				line[at] = Double.parseDouble(groups.get(i + 1).strip());
				if (at == 3) {
					lines.add(new Line(new Point(line[0], line[1]), new Point(line[2], line[3])));
				}
			}
		}
		return lines;
	}

	private static Handoff lettering() {
		return Handoff.of(SampleJobs.prepared(new Composition("Ahoy", SampleJobs.face("Liberation Serif Bold"), 30,
				Alignment.LEFT, OptionalDouble.empty(), List.of(3.0), OperationKind.CUT).toJob()));
	}

	private static Handoff curves() {
		return Runs.onDesk(true).leg(Stage.DRAW, Runs.pen(), 0, 80, "M20 380C60 300 120 390 160 310").leg(Stage.CUT,
				Runs.blade(), 0.9, 50, "M60 200C60 150 100 150 100 200V240H40Z M120 250A20 20 0 0 1 160 250A20 20 0 0 1 120 250Z")
				.handoff();
	}

	@Test
	void itDrawsLinesOfTheSameLength() throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hp2xx is not installed");
		for (Handoff handoff : List.of(lettering(), curves())) {
			double expected = Runs.axisLength(handoff);
			for (String arcs : List.of("no", "yes")) {
				List<Line> lines = lines(new Format("plt").bytes(handoff, Map.of("arcs", arcs, "change", "none")));
				double length = lines.stream().mapToDouble(line -> line.from().distance(line.to())).sum();
				assertEquals(expected, length, expected * 2e-3, "arcs " + arcs);
			}
		}
	}

	/** No pixel of either picture is further than two pixels from a line of the other. */
	@Test
	void itsPictureIsThatOfTheAxis() throws Exception {
		assumeTrue(Files.isExecutable(TOOL), "hp2xx is not installed");
		for (Handoff handoff : List.of(lettering(), curves())) {
			BufferedImage expected = picture(handoff);
			for (String arcs : handoff.run(Monitor.NONE).carriage().arcs() ? List.of("no", "yes") : List.of("no")) {
				byte[] plot = new Format("plt").bytes(handoff, Map.of("arcs", arcs, "change", "none"));
				BufferedImage found = ink(ImageIO.read(
						drawn("png", plot, "-d", Integer.toString(DPI), "-p", "11111111", "-c", "11111111").toFile()));
				assertEquals(expected.getWidth(), found.getWidth(), 3);
				assertEquals(expected.getHeight(), found.getHeight(), 3);
				assertNear(expected, found);
				assertNear(found, expected);
			}
		}
	}

	private static BufferedImage picture(Handoff handoff) {
		List<Line2D> path = new ArrayList<>();
		Bounds bounds = Bounds.EMPTY;
		for (Stroke stroke : handoff.run(Monitor.NONE).run().strokes().toList()) {
			for (Move move : stroke.axis()) {
				Point last = move.start();
				int steps = move.curvature() == 0 ? 1 : 16;
				for (int i = 1; i <= steps; i++) {
					Point next = move.at(move.length() * i / steps);
					path.add(new Line2D.Double(last.x(), last.y(), next.x(), next.y()));
					bounds = bounds.with(last).with(next);
					last = next;
				}
			}
		}
		BufferedImage image = new BufferedImage((int) (bounds.width() * PIXELS_PER_MM) + 40,
				(int) (bounds.height() * PIXELS_PER_MM) + 40, BufferedImage.TYPE_INT_RGB);
		Graphics2D graphics = image.createGraphics();
		graphics.setColor(Color.WHITE);
		graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
		graphics.setColor(Color.BLACK);
		graphics.translate(20, 20);
		graphics.scale(PIXELS_PER_MM, PIXELS_PER_MM);
		graphics.translate(-bounds.minX(), -bounds.minY());
		graphics.setStroke(new BasicStroke(0.2f));
		path.forEach(graphics::draw);
		graphics.dispose();
		return ink(image);
	}

	private static boolean isInk(BufferedImage image, int x, int y) {
		return x >= 0 && y >= 0 && x < image.getWidth() && y < image.getHeight() && (image.getRGB(x, y) & 0xff) < 0x80;
	}

	/** Cut to what is drawn. */
	private static BufferedImage ink(BufferedImage image) {
		int left = image.getWidth();
		int top = image.getHeight();
		int right = -1;
		int bottom = -1;
		for (int y = 0; y < image.getHeight(); y++) {
			for (int x = 0; x < image.getWidth(); x++) {
				if (isInk(image, x, y)) {
					left = Math.min(left, x);
					top = Math.min(top, y);
					right = Math.max(right, x);
					bottom = Math.max(bottom, y);
				}
			}
		}
		assertTrue(right > left && bottom > top, "nothing is drawn");
		return image.getSubimage(left, top, right - left + 1, bottom - top + 1);
	}

	private static void assertNear(BufferedImage all, BufferedImage lines) {
		int count = 0;
		for (int y = 0; y < all.getHeight(); y++) {
			for (int x = 0; x < all.getWidth(); x++) {
				if (isInk(all, x, y)) {
					count++;
					boolean near = false;
					for (int i = 0; i < 25 && !near; i++) {
						near = isInk(lines, x + i % 5 - 2, y + i / 5 - 2);
					}
					assertTrue(near, "nothing near " + x + ", " + y);
				}
			}
		}
		assertTrue(count > 1000, count + " pixels");
	}
}
