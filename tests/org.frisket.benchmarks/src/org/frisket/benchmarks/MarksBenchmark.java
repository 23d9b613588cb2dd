package org.frisket.benchmarks;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;

import javax.imageio.ImageIO;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.print.marks.FoundMarks;
import org.frisket.print.marks.Mark;
import org.frisket.print.marks.MarkDesign;
import org.frisket.print.marks.MarkFinder;
import org.frisket.print.marks.MarkPlacement;
import org.frisket.print.marks.MarkPlan;
import org.frisket.print.picture.Grey;
import org.frisket.print.picture.PictureFile;
import org.frisket.print.picture.UnreadablePictureException;

/**
 * Finding the marks of a printed sheet in simulated photographs of 1, 10 and 50 megapixels, against bare decoding
 * of the same file: a sheet of A4 a little askew on a table, with parts on it, under uneven light and with noise,
 * as JPEG.
 */
final class MarksBenchmark {

	private static final double WIDTH = 297;
	private static final double HEIGHT = 210;
	private static final int PARTS = 40;
	/** Pools of the heap tell less than there was when it was tidied meanwhile. */
	private static final int ROUNDS = 5;
	/** Half a pixel off is a mark that was not found, of any size of picture. */
	private static final double OFF = 0.5;

	private MarksBenchmark() {
	}

	static void run() throws Exception {
		MarkPlan plan = new MarkPlacement(MarkDesign.USUAL, 4, 3).propose(WIDTH, HEIGHT, 5, List.of());
		for (int megapixels : new int[] { 1, 10, 50 }) {
			int height = (int) Math.sqrt(megapixels * 1e6 / 1.5);
			int width = megapixels * 1_000_000 / height;
			AffineTransform toPixels = AffineTransform.getTranslateInstance(width * 0.07, height * 0.03);
			toPixels.rotate(0.03);
			toPixels.scale(width * 0.85 / WIDTH, width * 0.85 / WIDTH);
			byte[] file = file(plan, toPixels, width, height);
			PictureFile picture = PictureFile.of("sheet.jpg", file);
			Grey grey = grey(picture);
			double[] times = Stopwatch.cpu(megapixels > 10, () -> bare(file), () -> grey(picture), () -> found(plan, grey));
			long needed = LongStream.generate(() -> peak(() -> found(plan, grey))).limit(ROUNDS).max().orElseThrow();
			FoundMarks found = found(plan, grey);
			System.out.printf("marks in %d megapixels: bare decode %.0f ms, read %.0f ms, found %.0f ms, %.1f ms for each megapixel, %.2f"
					+ " of the decode; %d of %d marks, %.2f pixels off at most; %.2f bytes a pixel besides the picture%n", megapixels,
					times[0], times[1], times[2], times[2] / megapixels, times[2] / times[0], found.count(), plan.marks().size(),
					off(found, toPixels), (double) needed / width / height);
		}
	}

	private static byte[] file(MarkPlan plan, AffineTransform toPixels, int width, int height) throws IOException {
		BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
		Graphics2D graphics = image.createGraphics();
		graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
		graphics.setColor(new Color(0x8a7f72));
		graphics.fillRect(0, 0, width, height);
		graphics.transform(toPixels);
		graphics.setColor(new Color(0xf4f2ec));
		graphics.fill(new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
		Random random = new Random(50);
		for (int i = 0; i < PARTS; i++) {
			graphics.setColor(new Color(random.nextInt(180), random.nextInt(180), random.nextInt(180)));
			graphics.fill(new Ellipse2D.Double(25 + i % 8 * 31, 25 + i / 8 * 32, 26, 26));
		}
		graphics.setColor(new Color(0x202020));
		plan.marks().stream().map(Mark::region).forEach(region -> graphics.fill(path(region)));
		graphics.dispose();
		for (int y = 0; y < height; y++) {
			for (int x = 0; x < width; x++) {
				image.setRGB(x, y, lit(image.getRGB(x, y), 1 - 0.25 * (x + y) / (width + height), random));
			}
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ImageIO.setUseCache(false);
		ImageIO.write(image, "jpg", out);
		return out.toByteArray();
	}

	private static int lit(int rgb, double light, Random random) {
		int noise = random.nextInt(13) - 6;
		int lit = 0;
		for (int shift = 16; shift >= 0; shift -= 8) {
			lit |= Math.max(0, Math.min(255, (int) (light * (rgb >> shift & 0xff)) + noise)) << shift;
		}
		return lit;
	}

	private static Path2D path(Region region) {
		Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
		for (Contour contour : region.contours()) {
			List<Point> points = contour.flattened(0.002);
			path.moveTo(points.get(0).x(), points.get(0).y());
			points.subList(1, points.size()).forEach(point -> path.lineTo(point.x(), point.y()));
			path.closePath();
		}
		return path;
	}

	private static BufferedImage bare(byte[] file) {
		try {
			return ImageIO.read(new ByteArrayInputStream(file));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static Grey grey(PictureFile picture) {
		try {
			return picture.pixels(Monitor.NONE).grey();
		} catch (UnreadablePictureException e) {
			throw new IllegalStateException(e);
		}
	}

	private static FoundMarks found(MarkPlan plan, Grey grey) {
		return MarkFinder.find(plan, grey, Monitor.NONE);
	}

	/** In pixels; fails where a mark is not where it was drawn. */
	private static double off(FoundMarks found, AffineTransform toPixels) {
		double most = 0;
		for (int i = 0; i < found.places().size(); i++) {
			Point place = found.places().get(i).orElseThrow();
			Point2D drawn = toPixels.transform(new Point2D.Double(found.plan().places().get(i).x(),
					found.plan().places().get(i).y()), null);
			most = Math.max(most, place.distance(new Point(drawn.getX(), drawn.getY())));
		}
		if (most > OFF) {
			throw new IllegalStateException("a mark is off by %.2f pixels".formatted(most));
		}
		return most;
	}

	/**
	 * Bytes of the heap that work needs at its highest, as far as pools tell; what was garbage before is let go first.
	 */
	private static long peak(Runnable work) {
		System.gc();
		List<MemoryPoolMXBean> pools = ManagementFactory.getMemoryPoolMXBeans().stream()
				.filter(pool -> pool.getType() == MemoryType.HEAP).toList();
		long before = pools.stream().mapToLong(pool -> pool.getUsage().getUsed()).sum();
		pools.forEach(MemoryPoolMXBean::resetPeakUsage);
		work.run();
		return pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() - before;
	}
}
