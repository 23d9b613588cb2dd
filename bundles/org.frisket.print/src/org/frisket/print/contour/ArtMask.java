package org.frisket.print.contour;

import java.util.BitSet;

import org.frisket.geometry.Monitor;
import org.frisket.print.picture.Pixels;

/**
 * Which pixels are no art, by their colour. What differs only a little counts as art where it hangs together with what
 * differs clearly: that keeps soft edges, and leaves out the traces of lossy compression and the grain of paper. Where
 * nothing differs clearly, all that differs is art.
 *
 * @param none      a bit for each pixel, in rows from the top
 * @param evenShare of the border's pixels, how many have the colour that is no art
 */
record ArtMask(int width, int height, BitSet none, double evenShare) {

	private static final int MONITOR_ROWS = 64;
	/** Of the tolerance. */
	private static final double CLEARLY = 2;

	boolean isNone(int x, int y) {
		return x < 0 || y < 0 || x >= width || y >= height || none.get(y * width + x);
	}

	/**
	 * @param enclosed whether areas of that colour which the art encloses are no art either
	 * @throws java.util.concurrent.CancellationException if the monitor says so
	 */
	static ArtMask of(Pixels pixels, int rgb, double tolerance, double shadow, boolean enclosed, Monitor monitor) {
		int width = pixels.width();
		int height = pixels.height();
		int[] argb = pixels.argb();
		Lab behind = Lab.of(rgb);
		BitSet like = new BitSet(argb.length);
		BitSet clear = new BitSet(argb.length);
		int last = 0;
		double distance = distance(last, rgb, behind, shadow);
		for (int y = 0; y < height; y++) {
			if (y % MONITOR_ROWS == 0) {
				monitor.check();
				monitor.worked((double) y / height);
			}
			for (int i = y * width; i < (y + 1) * width; i++) {
				if (argb[i] != last) {
					last = argb[i];
					distance = distance(last, rgb, behind, shadow);
				}
				if (distance <= tolerance) {
					like.set(i);
				} else if (distance > CLEARLY * tolerance) {
					clear.set(i);
				}
			}
		}
		double even = evenShare(like, width, height);
		if (!clear.isEmpty()) {
			like.flip(0, argb.length);
			like = Flood.from(clear, width, height, like, monitor);
			like.flip(0, argb.length);
		}
		return new ArtMask(width, height, enclosed ? like : Flood.fromBorder(width, height, like, monitor), even);
	}

	private static double distance(int argb, int rgb, Lab behind, double shadow) {
		return Lab.of(over(argb, rgb)).distanceInShadow(behind, shadow);
	}

	/** A colour that can partly be seen through, on another. */
	static int over(int argb, int rgb) {
		int alpha = argb >>> 24;
		if (alpha == 255) {
			return argb & 0xffffff;
		}
		int mixed = 0;
		for (int shift = 0; shift <= 16; shift += 8) {
			mixed |= ((argb >> shift & 0xff) * alpha + (rgb >> shift & 0xff) * (255 - alpha) + 127) / 255 << shift;
		}
		return mixed;
	}

	private static double evenShare(BitSet like, int width, int height) {
		int even = 0;
		for (int x = 0; x < width; x++) {
			even += bit(like, x) + bit(like, (height - 1) * width + x);
		}
		for (int y = 0; y < height; y++) {
			even += bit(like, y * width) + bit(like, y * width + width - 1);
		}
		return even / (2.0 * (width + height));
	}

	private static int bit(BitSet set, int index) {
		return set.get(index) ? 1 : 0;
	}
}
