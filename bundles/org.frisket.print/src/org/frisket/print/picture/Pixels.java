package org.frisket.print.picture;

/**
 * The pixels of a picture in sRGB, as {@code 0xAARRGGBB} without the colour multiplied by alpha, in rows from the top. The
 * array is not copied.
 */
public record Pixels(int width, int height, int[] argb) {

	/** A square metre at 250 dots to the inch. Pixels take four bytes each, and as much again while they are read. */
	public static final int MOST = 100_000_000;

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
