package org.frisket.print.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Region;
import org.frisket.geometry.Transform;
import org.frisket.page.AwtPath;
import org.frisket.prepare.PreparedPicture;

/**
 * The colours at the edge of a picture carried on beyond it: every place has the colour of the nearest place of the art. It
 * is printed below the picture itself, so it is no finer than eyes need, and leaves the picture's own pixels alone.
 *
 * @param image of the colours @param place takes the unit square, y downwards, to the sheet
 */
record EdgeExtension(BufferedImage image, Transform place) {

	/** Finer than that nobody sees in a strip that is cut off; a choice of ours. */
	private static final double FINEST_MM = 25.4 / 300;
	private static final double MOST_PIXELS = 6e6;
	private static final double FULL = 0.999;
	private static final int SOLID = 128;

	/**
	 * @param printed whose edge it is, and whose area is to be filled
	 * @throws IOException if the picture cannot be decoded
	 */
	static EdgeExtension of(PrintedArt printed, ArtObjects objects, Monitor monitor) throws IOException {
		PreparedPicture picture = printed.picture().orElseThrow();
		double width = picture.width();
		double height = picture.height();
		// the picture upright and in its true size, its upper left corner at the origin
		Transform upright = picture.place().inverse().then(Transform.scaling(width, height));
		Bounds box = printed.area().transformed(upright).bounds();
		double pitch = Math.max(width / objects.width(printed),
				Math.max(FINEST_MM, Math.sqrt(box.width() * box.height() / MOST_PIXELS)));
		int columns = (int) Math.max(1, Math.ceil(box.width() / pitch));
		int rows = (int) Math.max(1, Math.ceil(box.height() / pitch));
		Bounds grid = new Bounds(box.minX(), box.minY(), box.minX() + columns * pitch, box.minY() + rows * pitch);
		BufferedImage pixels = objects.pixels(printed, (int) Math.ceil(2 * width / pitch), monitor);
		Region own = printed.own().transformed(upright);
		boolean[] seeds = mask(own, grid, columns, rows, pitch, own.area() < FULL * width * height);
		int[] colours = new int[columns * rows];
		for (int y = 0; y < rows; y++) {
			monitor.check();
			for (int x = 0; x < columns; x++) {
				int at = y * columns + x;
				if (seeds[at]) {
					int column = (int) Math.floor((grid.minX() + (x + 0.5) * pitch) / width * pixels.getWidth());
					int row = (int) Math.floor((grid.minY() + (y + 0.5) * pitch) / height * pixels.getHeight());
					boolean inside = column >= 0 && row >= 0 && column < pixels.getWidth() && row < pixels.getHeight();
					colours[at] = inside ? pixels.getRGB(column, row) : 0;
					seeds[at] = colours[at] >>> 24 >= SOLID;
				}
			}
		}
		return new EdgeExtension(filled(new NearestSeeds(seeds, columns, rows).find(monitor), colours, columns, rows),
				Transform.scaling(grid.width(), grid.height()).then(Transform.translation(grid.minX(), grid.minY()))
						.then(upright.inverse()));
	}

	/** Which pixels lie in the art. @param less by one pixel, for those at a found edge are mixed with the backdrop */
	private static boolean[] mask(Region art, Bounds grid, int columns, int rows, double pitch, boolean less) {
		BufferedImage drawn = new BufferedImage(columns, rows, BufferedImage.TYPE_BYTE_GRAY);
		Graphics2D graphics = drawn.createGraphics();
		graphics.setColor(Color.WHITE);
		graphics.transform(AffineTransform.getScaleInstance(1 / pitch, 1 / pitch));
		graphics.translate(-grid.minX(), -grid.minY());
		graphics.fill(AwtPath.of(art.contours()));
		graphics.dispose();
		byte[] bytes = ((DataBufferByte) drawn.getRaster().getDataBuffer()).getData();
		boolean[] mask = new boolean[bytes.length];
		for (int y = 0; y < rows; y++) {
			for (int x = 0; x < columns; x++) {
				int at = y * columns + x;
				mask[at] = bytes[at] != 0 && (!less || x > 0 && bytes[at - 1] != 0 && x < columns - 1 && bytes[at + 1] != 0
						&& y > 0 && bytes[at - columns] != 0 && y < rows - 1 && bytes[at + columns] != 0);
			}
		}
		return mask;
	}

	private static BufferedImage filled(int[] nearest, int[] colours, int columns, int rows) {
		BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
		for (int y = 0; y < rows; y++) {
			for (int x = 0; x < columns; x++) {
				int from = nearest[y * columns + x];
				image.setRGB(x, y, from < 0 ? 0xffffff : colours[from]);
			}
		}
		return image;
	}
}
