package org.frisket.print.picture;

import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.DataBufferInt;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * The pixels of a picture in sRGB, as {@code 0xAARRGGBB} without the colour multiplied by alpha, in rows from the top. The
 * array is not copied.
 */
public record Pixels(int width, int height, int[] argb) {

	/** A square metre at 250 dots to the inch. Pixels take four bytes each, and as much again while they are read. */
	public static final int MOST = 100_000_000;

	private static final int[] MASKS = { 0xff0000, 0xff00, 0xff, 0xff000000 };

	/** Luma of sRGB values: the weights of Rec. ITU-R BT.709, in 1/65536; from memory. */
	private static final int RED = 13933;
	private static final int GREEN = 46871;
	private static final int BLUE = 4732;

	/** @throws IllegalArgumentException if there are not as many values as pixels, or too many */
	public Pixels {
		if (width < 1 || height < 1 || (long) width * height != argb.length || argb.length > MOST) {
			throw new IllegalArgumentException(argb.length + " values for " + width + " × " + height + " pixels");
		}
	}

	public int at(int x, int y) {
		return argb[y * width + x];
	}

	/** From 0, seen through, to 255. */
	public int alpha(int x, int y) {
		return argb[y * width + x] >>> 24;
	}

	/** The same pixels as an image of Java, which shares the array. */
	public BufferedImage image() {
		WritableRaster raster = Raster.createPackedRaster(new DataBufferInt(argb, argb.length), width, height, width, MASKS, null);
		return new BufferedImage(ColorModel.getRGBdefault(), raster, false, null);
	}

	/** As it looks on white. */
	public Grey grey() {
		byte[] luminance = new byte[argb.length];
		for (int i = 0; i < argb.length; i++) {
			int pixel = argb[i];
			int alpha = pixel >>> 24;
			int luma = (RED * (pixel >> 16 & 0xff) + GREEN * (pixel >> 8 & 0xff) + BLUE * (pixel & 0xff) + (1 << 15)) >> 16;
			luminance[i] = (byte) ((luma * alpha + 255 * (255 - alpha) + 127) / 255);
		}
		return new Grey(width, height, luminance);
	}
}
