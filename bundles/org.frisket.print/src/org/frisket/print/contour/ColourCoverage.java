package org.frisket.print.contour;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

import org.frisket.geometry.Monitor;
import org.frisket.print.picture.Pixels;

/**
 * How much of each pixel is art, in a picture whose art is told by colour. Along the edge a pixel is a mixture of art and
 * of what lies behind; how much of each is told by where its colour lies between those of the pixels before and after, at
 * right angles to the edge. Mixed are the stored values, as all renderers known here do it.
 */
final class ColourCoverage {

	/** In pixels to both sides of where the mask ends: mixed ones may be nearer to either side. */
	private static final int BAND = 4;
	private static final int FARTHEST = 8;
	/** Near the edge its direction is told by what is near: farther off there may be another one. */
	private static final int NEAR = 2;
	/** The sum over the three channels of squares below which two colours are not told apart. */
	private static final int LEAST_CONTRAST = 300;
	/** Going away from the edge, colours change until there is less than this to gain. */
	private static final double GAIN = 1.1;

	private final Pixels pixels;
	private final ArtMask mask;
	private final int rgb;
	private final byte[] share;

	private ColourCoverage(Pixels pixels, ArtMask mask, int rgb) {
		this.pixels = pixels;
		this.mask = mask;
		this.rgb = rgb;
		share = new byte[pixels.argb().length];
	}

	/** @throws java.util.concurrent.CancellationException if the monitor says so */
	static Coverage of(Pixels pixels, ArtMask mask, int rgb, Monitor monitor) {
		ColourCoverage colours = new ColourCoverage(pixels, mask, rgb);
		BitSet band = colours.band(monitor);
		for (int i = 0; i < colours.share.length; i++) {
			colours.share[i] = (byte) (mask.none().get(i) ? 0 : Coverage.FULL);
		}
		monitor.check();
		int looked = 0;
		for (int i = band.nextSetBit(0); i >= 0; i = band.nextSetBit(i + 1)) {
			if (++looked % (1 << 12) == 0) {
				monitor.check();
			}
			colours.mix(i);
		}
		colours.fillPits(band);
		return new Coverage(pixels.width(), pixels.height(), colours.share);
	}

	private BitSet band(Monitor monitor) {
		BitSet band = new BitSet(share.length);
		for (int y = 0; y < pixels.height(); y++) {
			if (y % 64 == 0) {
				monitor.check();
			}
			boolean before = true;
			for (int x = 0; x < pixels.width(); x++) {
				boolean none = mask.isNone(x, y);
				if (none != before && x > 0) {
					mark(band, x - BAND, x + BAND - 1, y, y);
				}
				if (y > 0 && none != mask.isNone(x, y - 1)) {
					mark(band, x, x, y - BAND, y + BAND - 1);
				}
				before = none;
			}
		}
		return band;
	}

	private void mark(BitSet band, int left, int right, int top, int bottom) {
		for (int y = Math.max(0, top); y <= Math.min(pixels.height() - 1, bottom); y++) {
			band.set(y * pixels.width() + Math.max(0, left), y * pixels.width() + Math.min(pixels.width() - 1, right) + 1);
		}
	}

	private void mix(int index) {
		int x = index % pixels.width();
		int y = index / pixels.width();
		double[] inwards = inwards(x, y, NEAR);
		if (inwards == null) {
			inwards = inwards(x, y, BAND);
		}
		if (inwards == null) {
			return;
		}
		int art = colourAlong(x, y, inwards[0], inwards[1], false, rgb);
		if (art < 0) {
			return;
		}
		int none = colourAlong(x, y, -inwards[0], -inwards[1], true, art);
		int behind = none < 0 ? rgb : none;
		int contrast = square(art, behind);
		if (contrast >= LEAST_CONTRAST) {
			int own = ArtMask.over(pixels.at(x, y), rgb);
			double part = (double) dot(own, art, behind) / contrast;
			share[index] = (byte) Math.round(Coverage.FULL * Math.min(1, Math.max(0, part)));
		}
	}

	/** The direction towards the art, of length 1, from the pixels so far around; null if they do not tell. */
	private double[] inwards(int x, int y, int reach) {
		double inX = 0;
		double inY = 0;
		for (int dy = -reach; dy <= reach; dy++) {
			for (int dx = -reach; dx <= reach; dx++) {
				if (!mask.isNone(x + dx, y + dy)) {
					inX += dx;
					inY += dy;
				}
			}
		}
		double length = Math.sqrt(inX * inX + inY * inY);
		return length < 1 ? null : new double[] { inX / length, inY / length };
	}

	/**
	 * The colour on one side of the edge, where it stops to differ more from the colour on the other.
	 *
	 * @return -1 if that side is not reached
	 */
	private int colourAlong(int x, int y, double dx, double dy, boolean none, int other) {
		int best = -1;
		double contrast = 0;
		for (int step = 0; step <= FARTHEST; step++) {
			int atX = (int) Math.round(x + step * dx);
			int atY = (int) Math.round(y + step * dy);
			if (atX < 0 || atY < 0 || atX >= pixels.width() || atY >= pixels.height()) {
				break;
			}
			if (mask.isNone(atX, atY) != none) {
				if (best >= 0) {
					break;
				}
				continue;
			}
			int colour = ArtMask.over(pixels.at(atX, atY), rgb);
			int found = square(colour, other);
			if (best >= 0 && found <= GAIN * contrast) {
				break;
			}
			best = colour;
			contrast = found;
		}
		return best;
	}

	private static int square(int one, int other) {
		return dot(one, one, other);
	}

	/** Of the ways from {@code origin} to two colours. */
	private static int dot(int one, int other, int origin) {
		int sum = 0;
		for (int shift = 0; shift <= 16; shift += 8) {
			int from = origin >> shift & 0xff;
			sum += ((one >> shift & 0xff) - from) * ((other >> shift & 0xff) - from);
		}
		return sum;
	}

	/** Details of the art near its edge may look like what lies behind: only what is reached from outside is none. */
	private void fillPits(BitSet band) {
		BitSet pits = new BitSet();
		Deque<Integer> open = new ArrayDeque<>();
		for (int i = band.nextSetBit(0); i >= 0; i = band.nextSetBit(i + 1)) {
			if (!mask.none().get(i) && isBelowHalf(i)) {
				pits.set(i);
			} else if (isBelowHalf(i)) {
				open.push(i);
			}
		}
		while (!open.isEmpty()) {
			int i = open.pop();
			int x = i % pixels.width();
			reach(pits, open, i - pixels.width());
			reach(pits, open, i + pixels.width());
			if (x > 0) {
				reach(pits, open, i - 1);
			}
			if (x < pixels.width() - 1) {
				reach(pits, open, i + 1);
			}
		}
		for (int i = pits.nextSetBit(0); i >= 0; i = pits.nextSetBit(i + 1)) {
			share[i] = (byte) Coverage.FULL;
		}
	}

	private static void reach(BitSet pits, Deque<Integer> open, int index) {
		if (index >= 0 && pits.get(index)) {
			pits.clear(index);
			open.push(index);
		}
	}

	private boolean isBelowHalf(int index) {
		return (share[index] & 0xff) < Coverage.HALF;
	}
}
