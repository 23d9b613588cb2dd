package org.frisket.print.marks;

import org.frisket.geometry.Monitor;
import org.frisket.print.picture.Grey;

/** A picture in coarser pixels, each the mean of a square of fine ones. What is left over at the right and below is dropped. */
final class Reduced {

	private static final int UNSIGNED = 0xFF;

	final int width;
	final int height;
	/** Fine pixels to a side of a coarse one. */
	final int factor;
	private final byte[] means;

	Reduced(Grey picture, int factor, Monitor monitor) {
		this.factor = factor;
		width = Math.max(1, picture.width() / factor);
		height = Math.max(1, picture.height() / factor);
		means = new byte[width * height];
		int across = Math.min(factor, picture.width());
		int down = Math.min(factor, picture.height());
		for (int y = 0; y < height; y++) {
			monitor.check();
			for (int x = 0; x < width; x++) {
				int sum = 0;
				for (int v = 0; v < down; v++) {
					for (int u = 0; u < across; u++) {
						sum += picture.at(x * factor + u, y * factor + v);
					}
				}
				means[y * width + x] = (byte) (sum / (across * down));
			}
		}
	}

	int at(int x, int y) {
		return means[y * width + x] & UNSIGNED;
	}
}
