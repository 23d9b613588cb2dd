package org.frisket.ui.print.internal.output;

import java.awt.image.BufferedImage;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;

/** Pixels of a print file for a printer, which knows nothing of seeing through. */
final class PaperPixels {

	private static final int WHITE = 0xffffff;
	private static final int DEPTH = 24;

	private PaperPixels() {
	}

	/** Of an image without any transparency. */
	static ImageData of(BufferedImage image) {
		ImageData data = new ImageData(image.getWidth(), image.getHeight(), DEPTH, new PaletteData(0xff0000, 0xff00, 0xff));
		int[] row = new int[image.getWidth()];
		for (int y = 0; y < image.getHeight(); y++) {
			image.getRGB(0, y, row.length, 1, row, 0, row.length);
			for (int x = 0; x < row.length; x++) {
				row[x] &= WHITE;
			}
			data.setPixels(0, y, row.length, row, 0);
		}
		return data;
	}

	/** Whether nothing is printed on it. */
	static boolean isBlank(BufferedImage image) {
		int[] row = new int[image.getWidth()];
		for (int y = 0; y < image.getHeight(); y++) {
			image.getRGB(0, y, row.length, 1, row, 0, row.length);
			for (int pixel : row) {
				if ((pixel & WHITE) != WHITE) {
					return false;
				}
			}
		}
		return true;
	}
}
