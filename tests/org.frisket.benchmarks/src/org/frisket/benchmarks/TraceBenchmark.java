package org.frisket.benchmarks;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.imageio.ImageIO;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.measure.Straying;
import org.frisket.print.contour.ContourOptions;
import org.frisket.print.contour.ContourTracer;
import org.frisket.print.contour.HoleRule;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.Pixels;
import org.frisket.print.picture.Resolution;
import org.frisket.print.picture.UnreadablePictureException;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/**
 * Tracing pictures of 1, 10 and 50 megapixels against bare decoding of the same file; and the nodes of the contour against
 * those of plain marching squares, thinned to the same error.
 */
final class TraceBenchmark {

	private static final String FONT = "/usr/share/fonts/truetype/dejavu/DejaVuSans-Bold.ttf";
	private static final String WEBP_WRITER = "/usr/bin/cwebp";
	/** A pixel is a mm: lengths are in pixels. */
	private static final Resolution PIXEL = Resolution.given(25.4);
	private static final double DEVIATION = 0.3;
	private static final int HALF = 128;

	private TraceBenchmark() {
	}

	static void run() throws Exception {
		for (int megapixels : new int[] { 1, 10, 50 }) {
			int height = (int) Math.sqrt(megapixels * 1e6 / 1.5);
			int width = megapixels * 1_000_000 / height;
			for (boolean transparent : new boolean[] { true, false }) {
				byte[] file = file(width, height, transparent);
				PictureFile picture = PictureFile.of("banner.png", file);
				boolean once = megapixels > 10;
				double[] times = Stopwatch.cpu(once, () -> bare(file), () -> pixels(picture), () -> traced(picture));
				Region region = traced(picture);
				System.out.printf("trace of %d megapixels, %s: bare decode %.0f ms, read %.0f ms, read and traced %.0f ms, %.2f"
						+ " of the decode; %d pieces, %d nodes%n", megapixels, transparent ? "transparent" : "on cream", times[0],
						times[1], times[2], times[2] / times[0], region.pieces().size(), region.nodeCount());
				if (megapixels == 1 && transparent) {
					nodes(pixels(picture), region);
				}
			}
		}
		webp();
	}

	/** The same picture as WebP with loss, written by libwebp, against decoding of the PNG. */
	private static void webp() throws Exception {
		if (!Files.isExecutable(Path.of(WEBP_WRITER))) {
			System.out.println("trace of WebP left out: cwebp (package webp) is not installed");
			return;
		}
		byte[] png = file(3873, 2582, true);
		Path folder = Files.createTempDirectory("frisket-webp");
		Path from = Files.write(folder.resolve("banner.png"), png);
		Path to = folder.resolve("banner.webp");
		Process process = new ProcessBuilder(WEBP_WRITER, "-quiet", "-m", "1", from.toString(), "-o", to.toString()).inheritIO().start();
		if (process.waitFor() != 0) {
			throw new IllegalStateException("cwebp failed");
		}
		PictureFile picture = PictureFile.of("banner.webp", Files.readAllBytes(to));
		for (Path each : new Path[] { from, to, folder }) {
			Files.delete(each);
		}
		double[] times = Stopwatch.cpu(true, () -> bare(png), () -> pixels(picture), () -> traced(picture));
		System.out.printf("trace of 10 megapixels, WebP: bare decode of PNG %.0f ms, read %.0f ms, read and traced %.0f ms%n",
				times[0], times[1], times[2]);
	}

	/** Big letters, as many as a banner has. */
	private static byte[] file(int width, int height, boolean transparent) throws Exception {
		BufferedImage image = new BufferedImage(width, height,
				transparent ? BufferedImage.TYPE_4BYTE_ABGR : BufferedImage.TYPE_3BYTE_BGR);
		Graphics2D graphics = image.createGraphics();
		if (!transparent) {
			graphics.setColor(new Color(0xf4f0e6));
			graphics.fillRect(0, 0, width, height);
		}
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
		graphics.setColor(new Color(0x1f5060));
		Font font = Font.createFont(Font.TRUETYPE_FONT, new File(FONT)).deriveFont(height / 4f);
		String[] lines = { "Harbour", "Lane & Co", "Ferry 50" };
		for (int i = 0; i < lines.length; i++) {
			graphics.fill(font.createGlyphVector(graphics.getFontRenderContext(), lines[i]).getOutline(width / 20f,
					height * (0.28f + 0.3f * i)));
		}
		graphics.dispose();
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.write(image, "png", out);
		return out.toByteArray();
	}

	private static BufferedImage bare(byte[] file) {
		try {
			ImageIO.setUseCache(false);
			return ImageIO.read(new ByteArrayInputStream(file));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static Pixels pixels(PictureFile picture) {
		try {
			return picture.pixels(Monitor.NONE);
		} catch (UnreadablePictureException e) {
			throw new IllegalStateException(e);
		}
	}

	private static Region traced(PictureFile picture) {
		return ContourTracer.trace(pixels(picture), PIXEL, ContourOptions.USUAL.holes(HoleRule.KEEP).without(2, 0),
				Monitor.NONE).region();
	}

	private static void nodes(Pixels pixels, Region region) {
		List<Contour> squares = marchingSquares(pixels);
		List<Contour> thinned = new ArrayList<>();
		for (Contour contour : squares) {
			thinned.add(thinned(contour));
		}
		System.out.printf("nodes within %.1f pixels: %d of curves, %d of marching squares, %d of these thinned, %.1f for each;"
				+ " apart by %.2f pixels at most%n", DEVIATION, region.nodeCount(), nodes(squares), nodes(thinned),
				(double) nodes(thinned) / region.nodeCount(),
				Straying.of(region.contours(), thinned, 0.01, Monitor.NONE).mm());
	}

	private static int nodes(List<Contour> contours) {
		return contours.stream().mapToInt(Contour::nodeCount).sum();
	}

	private static Contour thinned(Contour contour) {
		GeometryFactory factory = new GeometryFactory();
		List<Point> points = contour.flattened(1);
		Coordinate[] ring = new Coordinate[points.size() + 1];
		for (int i = 0; i < ring.length; i++) {
			Point point = points.get(i % points.size());
			ring[i] = new Coordinate(point.x(), point.y());
		}
		LineString line = factory.createLineString(ring);
		Geometry simple = DouglasPeuckerSimplifier.simplify(line, DEVIATION);
		List<Point> kept = new ArrayList<>();
		for (int i = 0; i + 1 < simple.getNumPoints(); i++) {
			kept.add(new Point(simple.getCoordinates()[i].x, simple.getCoordinates()[i].y));
		}
		return Contour.polygon(kept);
	}

	/** The plain form: straight between the centres of pixels, the art on the left hand, opposite corners never joined. */
	private static List<Contour> marchingSquares(Pixels pixels) {
		List<Contour> rings = new ArrayList<>();
		boolean[] seen = new boolean[pixels.width() * pixels.height()];
		for (int y = 0; y < pixels.height(); y++) {
			for (int x = 0; x < pixels.width(); x++) {
				if (alpha(pixels, x, y) >= HALF && alpha(pixels, x - 1, y) < HALF && !seen[y * pixels.width() + x]) {
					rings.add(ring(pixels, x, y, seen));
				}
			}
		}
		return rings;
	}

	private static Contour ring(Pixels pixels, int startX, int startY, boolean[] seen) {
		List<Point> points = new ArrayList<>();
		int x = startX;
		int y = startY;
		int dx = -1;
		int dy = 0;
		do {
			if (dx == -1) {
				seen[y * pixels.width() + x] = true;
			}
			double inner = alpha(pixels, x, y);
			double step = (inner - HALF + 0.5) / (inner - alpha(pixels, x + dx, y + dy));
			points.add(new Point(x + 0.5 + step * dx, y + 0.5 + step * dy));
			boolean ahead = alpha(pixels, x + dy, y - dx) >= HALF;
			boolean outer = alpha(pixels, x + dx + dy, y + dy - dx) >= HALF;
			int turned = dx;
			if (ahead && outer) {
				x += dx + dy;
				y += dy - turned;
				dx = -dy;
				dy = turned;
			} else if (ahead) {
				x += dy;
				y -= dx;
			} else {
				dx = dy;
				dy = -turned;
			}
		} while (x != startX || y != startY || dx != -1 || dy != 0);
		return Contour.polygon(points);
	}

	private static int alpha(Pixels pixels, int x, int y) {
		return x < 0 || y < 0 || x >= pixels.width() || y >= pixels.height() ? 0 : pixels.alpha(x, y);
	}
}
