package org.frisket.toolpath.order;

import org.frisket.geometry.Point;

/**
 * Things to be made one after the other, each entered at one place and left at another: the same for a closed track, the
 * other end for an open one, which may be made either way round. Some have to be made before others: what lies within
 * before what encloses it.
 */
public final class Stops {

	final int count;
	final double[] inX;
	final double[] inY;
	final double[] outX;
	final double[] outY;
	/** What has to wait for a stop, -1 for nothing; a forest. */
	final int[] after;

	/**
	 * @param in    where each is entered
	 * @param out   where it is left
	 * @param after for each the one that has to wait for it, or -1; whatever waits for that waits for both
	 * @throws IllegalArgumentException if some wait for each other
	 */
	public Stops(Point[] in, Point[] out, int[] after) {
		count = in.length;
		inX = new double[count];
		inY = new double[count];
		outX = new double[count];
		outY = new double[count];
		this.after = after.clone();
		for (int i = 0; i < count; i++) {
			inX[i] = in[i].x();
			inY[i] = in[i].y();
			outX[i] = out[i].x();
			outY[i] = out[i].y();
		}
		for (int i = 0; i < count; i++) {
			int steps = 0;
			for (int k = after[i]; k >= 0; k = after[k]) {
				if (++steps > count) {
					throw new IllegalArgumentException("stops wait for each other: " + i);
				}
			}
		}
	}

	/** The way from a place to the nearer end of a stop. */
	double nearest(int stop, double x, double y) {
		return Math.min(Sequence.way(x, y, inX[stop], inY[stop]), Sequence.way(x, y, outX[stop], outY[stop]));
	}

	public int count() {
		return count;
	}
}
