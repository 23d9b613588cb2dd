package org.frisket.print.picture;

import java.util.Arrays;

import org.frisket.geometry.Monitor;

/** A picture in fewer pixels, each of them the mean of what it covers; what cannot be seen does not count for colour. */
final class FewerPixels {

	private final Pixels from;
	private final int width;
	private final double stepX;
	private final double stepY;
	/** Alpha and the three colours times alpha, of one row. */
	private final double[] sums;

	private FewerPixels(Pixels from, int width, int height) {
		this.from = from;
		this.width = width;
		stepX = (double) from.width() / width;
		stepY = (double) from.height() / height;
		sums = new double[4 * width];
	}

	/** Itself if it is not wider. */
	static Pixels of(Pixels from, int width, Monitor monitor) {
		if (width >= from.width()) {
			return from;
		}
		int height = (int) Math.max(1, Math.round((double) from.height() * width / from.width()));
		FewerPixels fewer = new FewerPixels(from, width, height);
		int[] argb = new int[width * height];
		for (int y = 0; y < height; y++) {
			monitor.check();
			fewer.row(y, argb);
		}
		return new Pixels(width, height, argb);
	}

	private void row(int y, int[] argb) {
		Arrays.fill(sums, 0);
		double start = y * stepY;
		double end = Math.min(from.height(), start + stepY);
		for (int row = (int) start; row < end; row++) {
			add(row, Math.min(row + 1, end) - Math.max(row, start));
		}
		double area = stepX * (end - start);
		for (int x = 0; x < width; x++) {
			argb[y * width + x] = mean(4 * x, area);
		}
	}

	private void add(int row, double share) {
		for (int x = 0; x < width; x++) {
			double start = x * stepX;
			double end = Math.min(from.width(), start + stepX);
			for (int column = (int) start; column < end; column++) {
				int pixel = from.at(column, row);
				double weight = share * (Math.min(column + 1, end) - Math.max(column, start)) * (pixel >>> 24);
				sums[4 * x] += weight;
				sums[4 * x + 1] += weight * (pixel >> 16 & 0xff);
				sums[4 * x + 2] += weight * (pixel >> 8 & 0xff);
				sums[4 * x + 3] += weight * (pixel & 0xff);
			}
		}
	}

	private int mean(int at, double area) {
		double alpha = sums[at];
		int pixel = (int) Math.min(255, Math.round(alpha / area));
		for (int i = 1; i < 4; i++) {
			pixel = pixel << 8 | (alpha > 0 ? (int) Math.min(255, Math.round(sums[at + i] / alpha)) : 0);
		}
		return pixel;
	}
}
