package org.frisket.print.contour;

import java.util.HashMap;
import java.util.Map;

import org.frisket.print.picture.Pixels;

/**
 * What lies behind the art of a picture.
 *
 * @param transparent whether the art is what cannot be seen through
 * @param rgb         else the colour that is no art, as {@code 0xRRGGBB}
 */
public record Backdrop(boolean transparent, int rgb) {

	public static final Backdrop TRANSPARENT = new Backdrop(true, 0);

	/** Pixels more than half transparent. */
	private static final int CLEAR = 128;
	/** Of the border, or of the whole picture: fewer are taken for specks. */
	private static final double FEW = 0.01;
	private static final int BITS = 4;

	public static Backdrop colour(int rgb) {
		return new Backdrop(false, rgb & 0xffffff);
	}

	/**
	 * Transparent if more than a hundredth of the picture or of its border can be seen through; else the colour that most
	 * of the border has.
	 */
	public static Backdrop of(Pixels pixels) {
		int clear = 0;
		for (int pixel : pixels.argb()) {
			if (pixel >>> 24 < CLEAR) {
				clear++;
			}
		}
		Border border = new Border(pixels);
		return clear > FEW * pixels.argb().length || border.clear > FEW * border.count ? TRANSPARENT
				: colour(border.usual());
	}

	/** {@code transparent} or {@code #rrggbb}. */
	@Override
	public String toString() {
		return transparent ? "transparent" : String.format("#%06x", rgb);
	}

	/** Colours of the border, counted in coarse boxes of which each keeps the sum of what is in it. */
	private static final class Border {

		private final Map<Integer, long[]> boxes = new HashMap<>();
		private int count;
		private int clear;

		Border(Pixels pixels) {
			for (int x = 0; x < pixels.width(); x++) {
				add(pixels.at(x, 0));
				add(pixels.at(x, pixels.height() - 1));
			}
			for (int y = 0; y < pixels.height(); y++) {
				add(pixels.at(0, y));
				add(pixels.at(pixels.width() - 1, y));
			}
		}

		private void add(int pixel) {
			count++;
			if (pixel >>> 24 < CLEAR) {
				clear++;
				return;
			}
			long[] box = boxes.computeIfAbsent(key(pixel >> 16) << 16 | key(pixel >> 8) << 8 | key(pixel), k -> new long[4]);
			box[0]++;
			box[1] += pixel >> 16 & 0xff;
			box[2] += pixel >> 8 & 0xff;
			box[3] += pixel & 0xff;
		}

		private static int key(int channel) {
			return (channel & 0xff) >> 8 - BITS;
		}

		/** The mean of the fullest box and its neighbours, for a colour may lie where boxes meet. */
		int usual() {
			int best = 0;
			long[] mean = new long[] { 1, 255, 255, 255 };
			for (Map.Entry<Integer, long[]> box : boxes.entrySet()) {
				if (box.getValue()[0] > mean[0] || box.getValue()[0] == mean[0] && box.getKey() < best) {
					best = box.getKey();
					mean = box.getValue();
				}
			}
			long[] sum = new long[4];
			for (Map.Entry<Integer, long[]> box : boxes.entrySet()) {
				if (isNear(box.getKey() >> 16, best >> 16) && isNear(box.getKey() >> 8 & 0xff, best >> 8 & 0xff)
						&& isNear(box.getKey() & 0xff, best & 0xff)) {
					for (int i = 0; i < sum.length; i++) {
						sum[i] += box.getValue()[i];
					}
				}
			}
			if (sum[0] == 0) {
				return 0xffffff;
			}
			return (int) (sum[1] / sum[0]) << 16 | (int) (sum[2] / sum[0]) << 8 | (int) (sum[3] / sum[0]);
		}

		private static boolean isNear(int one, int other) {
			return Math.abs(one - other) <= 1;
		}
	}
}
