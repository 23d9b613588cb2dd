package org.frisket.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Line;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.prepare.layout.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines on pages, as pictures and as PDF painted by poppler, which is no part of this project. */
class StrokesTest {

	private static final int DPI = 254;
	private static final double PER_MM = DPI / 25.4;
	/** Two sides of a square, left open. */
	private static final Outline ANGLE = Outline.of(Contour.open(List.of(new Line(new Point(20, 20), new Point(80, 20)),
			new Line(new Point(80, 20), new Point(80, 80)))));

	@TempDir
	private Path folder;

	private static BufferedImage picture(Ink ink) throws Exception {
		try (PicturePage page = new PicturePage(Paper.A4, DPI)) {
			page.stroke(ANGLE, ink);
			ByteArrayOutputStream out = new ByteArrayOutputStream();
			page.write(out);
			return ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
		}
	}

	private BufferedImage pdf(Ink ink) throws Exception {
		Path file = folder.resolve("page.pdf");
		try (PdfPages pages = new PdfPages("Lines", "lines", Optional.empty())) {
			pages.add(Paper.A4, painter -> painter.stroke(ANGLE, ink));
			try (var out = Files.newOutputStream(file)) {
				pages.write(out);
			}
		}
		Process process = new ProcessBuilder("pdftocairo", "-png", "-singlefile", "-gray", "-r", String.valueOf(DPI),
				file.toString(), "-").redirectError(ProcessBuilder.Redirect.INHERIT).start();
		BufferedImage image = ImageIO.read(process.getInputStream());
		assertEquals(0, process.waitFor());
		return image;
	}

	/** mm² in a box that are as dark as ink of full strength. */
	private static double inked(BufferedImage image, Bounds box) {
		double sum = 0;
		for (int y = (int) (box.minY() * PER_MM); y < box.maxY() * PER_MM; y++) {
			for (int x = (int) (box.minX() * PER_MM); x < box.maxX() * PER_MM; x++) {
				sum += 1 - image.getRaster().getSample(x, y, 0) / 255.0;
			}
		}
		return sum / (PER_MM * PER_MM);
	}

	@Test
	void dashesAndWidthsAreThoseOfTheInk() throws Exception {
		Bounds all = new Bounds(10, 10, 90, 90);
		for (Ink ink : List.of(new Ink("#000000", 0.5, List.of()), new Ink("#000000", 1, List.of(3.0, 1.0)))) {
			// 120 mm, of which dashes leave three in four
			double expected = ink.pattern().isEmpty() ? 60 : 90;
			assertEquals(expected, inked(pdf(ink), all), 1, ink.toString());
			assertEquals(expected, inked(picture(ink), all), 1, ink.toString());
		}
	}

	@Test
	void openLinesStayOpen() throws Exception {
		Ink ink = new Ink("#0b5f62", 0.5, List.of());
		Bounds across = new Bounds(30, 30, 70, 75);
		assertEquals(0, inked(pdf(ink), across), 1e-9);
		assertEquals(0, inked(picture(ink), across), 1e-9);
	}

	@Test
	void linesOfWordsFitTheirRoomAndLoseNothing() throws Exception {
		String text = "Keep hands, hair and loose sleeves away from the moving carriage of this machine. ".repeat(4).strip();
		for (double room : new double[] { 20, 57, 120, 1000 }) {
			List<String> lines = Words.lines(text, 2, room);
			assertEquals(text, String.join(" ", lines));
			for (int i = 0; i < lines.size(); i++) {
				assertTrue(Words.width(lines.get(i), 2) <= room, lines.get(i));
				if (i > 0) {
					String first = lines.get(i).split(" ")[0];
					assertTrue(Words.width(lines.get(i - 1) + " " + first, 2) > room, "no line ends early");
				}
			}
		}
	}
}
