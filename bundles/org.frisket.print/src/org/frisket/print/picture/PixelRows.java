package org.frisket.print.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.Raster;

import org.frisket.geometry.Monitor;

/** Decoded values, a strip of rows at a time, to sRGB and to where they are seen. */
final class PixelRows {

	private static final int STRIP = 64;

	private final Head head;
	private final BufferedImage image;
	private final Raster raster;
	private final int width;
	private final int height;
	private final int[] argb;

	/** @param image null if there are only values */
	PixelRows(Head head, BufferedImage image, Raster raster) {
		this.head = head;
		this.image = image;
		this.raster = raster;
		width = head.isTurned() ? head.height : head.width;
		height = head.isTurned() ? head.width : head.height;
		argb = new int[width * height];
	}

	Pixels pixels(Monitor monitor) {
		int type = raster.getSampleModel().getDataType();
		if (type != DataBuffer.TYPE_BYTE && type != DataBuffer.TYPE_USHORT && image == null) {
			throw new IllegalArgumentException(Messages.PixelRows_depth);
		}
		boolean plain = image != null && (!(image.getColorModel() instanceof ComponentColorModel)
				|| type != DataBuffer.TYPE_BYTE && type != DataBuffer.TYPE_USHORT);
		SrgbValues values = plain ? null : SrgbValues.of(head);
		int columns = Math.min(raster.getWidth(), head.width - head.left);
		int rows = Math.min(raster.getHeight(), head.height - head.top);
		int[] strip = new int[columns * STRIP];
		for (int from = 0; from < rows; from += STRIP) {
			monitor.check();
			int count = Math.min(STRIP, rows - from);
			if (values == null) {
				decoded(columns, from, count, strip);
			} else {
				values.convert(raster, columns, from, count, image != null && image.isAlphaPremultiplied(), strip);
			}
			for (int y = 0; y < count; y++) {
				place(strip, y * columns, columns, head.top + from + y);
			}
		}
		return new Pixels(width, height, argb);
	}

	/** Palettes and packed values: in sRGB already. */
	private void decoded(int columns, int from, int count, int[] strip) {
		if (image.getColorModel() instanceof IndexColorModel palette) {
			int[] colours = new int[palette.getMapSize()];
			palette.getRGBs(colours);
			raster.getSamples(0, from, columns, count, 0, strip);
			for (int i = 0; i < columns * count; i++) {
				strip[i] = strip[i] < colours.length ? colours[strip[i]] : 0;
			}
		} else {
			image.getRGB(0, from, columns, count, strip, 0, columns);
		}
	}

	/** The eight ways in which the first row and column can lie, as TIFF 6.0 lists them. */
	private void place(int[] row, int offset, int columns, int y) {
		int w = head.width;
		int h = head.height;
		for (int i = 0; i < columns; i++) {
			int x = head.left + i;
			int at = switch (head.orientation) {
			case 2 -> y * width + w - 1 - x;
			case 3 -> (h - 1 - y) * width + w - 1 - x;
			case 4 -> (h - 1 - y) * width + x;
			case 5 -> x * width + y;
			case 6 -> x * width + h - 1 - y;
			case 7 -> (w - 1 - x) * width + h - 1 - y;
			case 8 -> (w - 1 - x) * width + y;
			default -> y * width + x;
			};
			argb[at] = row[offset + i];
		}
	}
}
