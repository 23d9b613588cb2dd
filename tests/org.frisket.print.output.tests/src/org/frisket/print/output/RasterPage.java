package org.frisket.print.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

import org.frisket.geometry.Bounds;

/** A page as a renderer of another project sees it: Debian's pdftoppm (poppler), 20 pixels to the mm. */
final class RasterPage {

	static final int PER_MM = 20;
	private static final String DPI = "508";

	/** Of the piece of the page, in mm. */
	private final Bounds piece;
	private final BufferedImage image;

	private RasterPage(Bounds piece, BufferedImage image) {
		this.piece = piece;
		this.image = image;
	}

	/** @param page from 1 @param piece of it, in mm */
	static RasterPage of(byte[] pdf, int page, Bounds piece, Path folder) throws IOException, InterruptedException {
		Path file = Files.write(folder.resolve("page.pdf"), pdf);
		String number = Integer.toString(page);
		output("pdftoppm", "-r", DPI, "-f", number, "-l", number, "-x", pixels(piece.minX()), "-y", pixels(piece.minY()),
				"-W", pixels(piece.width()), "-H", pixels(piece.height()), "-singlefile", file.toString(),
				folder.resolve("page").toString());
		return new RasterPage(piece, portable(Files.readAllBytes(folder.resolve("page.ppm"))));
	}

	private static String pixels(double mm) {
		return Long.toString(Math.round(mm * PER_MM));
	}

	/** A portable pixmap: P6, width, height and 255 as words, then a byte for each colour. */
	private static BufferedImage portable(byte[] bytes) {
		int[] head = new int[3];
		int at = 3;
		for (int i = 0; i < head.length; i++) {
			for (; bytes[at] > ' '; at++) {
				head[i] = 10 * head[i] + bytes[at] - '0';
			}
			at++;
		}
		BufferedImage image = new BufferedImage(head[0], head[1], BufferedImage.TYPE_INT_RGB);
		int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
		for (int i = 0; i < pixels.length; i++, at += 3) {
			pixels[i] = (bytes[at] & 0xff) << 16 | (bytes[at + 1] & 0xff) << 8 | bytes[at + 2] & 0xff;
		}
		return image;
	}

	/** What a tool says; the test is left out where there is none. */
	static String output(String... command) throws IOException, InterruptedException {
		assumeTrue(Files.isExecutable(Path.of("/usr/bin", command[0])), command[0] + " is not installed");
		Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
		String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
		assertEquals(0, process.waitFor(), said);
		return said;
	}

	BufferedImage image() {
		return image;
	}

	/** At a place in mm, as {@code 0xrrggbb}. */
	int colour(double x, double y) {
		return rgb((int) (x * PER_MM), (int) (y * PER_MM));
	}

	/** @param x pixels from the edge of the page */
	private int rgb(int x, int y) {
		return image.getRGB(x - (int) (piece.minX() * PER_MM), y - (int) (piece.minY() * PER_MM)) & 0xffffff;
	}

	/** How dark a pixel is, 0 to 1, by its green. */
	private double ink(int x, int y) {
		return 1 - (rgb(x, y) >> 8 & 0xff) / 255.0;
	}

	/** How many mm of a row are inked, between two places. */
	double inkAcross(double from, double to, double y) {
		double sum = 0;
		for (int x = (int) Math.round(from * PER_MM); x < Math.round(to * PER_MM); x++) {
			sum += ink(x, (int) (y * PER_MM));
		}
		return sum / PER_MM;
	}

	/** How many mm of a column are inked, between two places. */
	double inkDown(double from, double to, double x) {
		double sum = 0;
		for (int y = (int) Math.round(from * PER_MM); y < Math.round(to * PER_MM); y++) {
			sum += ink((int) (x * PER_MM), y);
		}
		return sum / PER_MM;
	}

	/** Middle of the ink of a row, between two places, in mm. */
	double middleAcross(double from, double to, double y) {
		double sum = 0;
		double weighed = 0;
		for (int x = (int) Math.round(from * PER_MM); x < Math.round(to * PER_MM); x++) {
			double ink = ink(x, (int) (y * PER_MM));
			sum += ink;
			weighed += ink * (x + 0.5);
		}
		return weighed / sum / PER_MM;
	}
}
