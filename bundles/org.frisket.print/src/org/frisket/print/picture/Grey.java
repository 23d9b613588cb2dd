package org.frisket.print.picture;

/**
 * A picture in shades of grey: 0 is black, 255 white, one byte a pixel, row by row from the top left. The centre of the first
 * pixel is at (0.5, 0.5). It does not change; the array it is made with is kept, not copied, for scans are large, and belongs
 * to it from then on.
 */
public final class Grey {

	private static final int UNSIGNED = 0xFF;

	private final int width;
	private final int height;
	private final byte[] luminance;

	/** @throws IllegalArgumentException unless there are width times height bytes, at least one */
	public Grey(int width, int height, byte[] luminance) {
		if (width < 1 || height < 1 || (long) width * height != luminance.length) {
			throw new IllegalArgumentException(width + " x " + height + " pixels are not " + luminance.length + " bytes");
		}
		this.width = width;
		this.height = height;
		this.luminance = luminance;
	}

	/** In pixels. */
	public int width() {
		return width;
	}

	/** In pixels. */
	public int height() {
		return height;
	}

	/** The shade of a pixel, 0 to 255. @throws IndexOutOfBoundsException outside of the picture */
	public int at(int x, int y) {
		if (x < 0 || x >= width || y < 0 || y >= height) {
			throw new IndexOutOfBoundsException("(" + x + ", " + y + ") is outside of " + width + " x " + height + " pixels");
		}
		return luminance[y * width + x] & UNSIGNED;
	}

	/** The shade at a place between pixels, from the four around it; beyond the edge it goes on as at the edge. */
	public double sample(double x, double y) {
		double fromCentreX = Math.max(0, Math.min(width - 1.0, x - 0.5));
		double fromCentreY = Math.max(0, Math.min(height - 1.0, y - 0.5));
		int left = (int) fromCentreX;
		int top = (int) fromCentreY;
		int right = Math.min(width - 1, left + 1);
		int bottom = Math.min(height - 1, top + 1);
		double u = fromCentreX - left;
		double v = fromCentreY - top;
		double above = at(left, top) * (1 - u) + at(right, top) * u;
		double below = at(left, bottom) * (1 - u) + at(right, bottom) * u;
		return above * (1 - v) + below * v;
	}

	/** Whether a place lies in the picture. */
	public boolean contains(double x, double y) {
		return x >= 0 && x <= width && y >= 0 && y <= height;
	}
}
