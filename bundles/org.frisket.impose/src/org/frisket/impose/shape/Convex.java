package org.frisket.impose.shape;

import java.util.Arrays;

/**
 * A convex polygon of at least three corners. The corners run so that the inside lies to the left of each edge when y is
 * taken to point up; which way the page's y points does not matter here.
 */
public final class Convex {

	private final double[] x;
	private final double[] y;

	/** The arrays become this polygon's own. */
	Convex(double[] x, double[] y) {
		this.x = x;
		this.y = y;
	}

	public int size() {
		return x.length;
	}

	public double x(int corner) {
		return x[corner];
	}

	public double y(int corner) {
		return y[corner];
	}

	/** The same, turned about the origin. */
	public Convex turned(double cos, double sin) {
		double[] tx = new double[x.length];
		double[] ty = new double[x.length];
		for (int i = 0; i < x.length; i++) {
			tx[i] = cos * x[i] - sin * y[i];
			ty[i] = sin * x[i] + cos * y[i];
		}
		return new Convex(tx, ty);
	}

	/**
	 * All displacements of {@code other} at which it meets this: the Minkowski sum of this and of the other mirrored in
	 * the origin. Found by merging the edges of both by their direction.
	 */
	public Convex meeting(Convex other) {
		int n = x.length;
		int m = other.x.length;
		double[] sx = new double[n + m];
		double[] sy = new double[n + m];
		int a = lowest(x, y, 1);
		int b = lowest(other.x, other.y, -1);
		double px = x[a] - other.x[b];
		double py = y[a] - other.y[b];
		int i = 0;
		int j = 0;
		int k = 0;
		while (i < n || j < m) {
			sx[k] = px;
			sy[k++] = py;
			int a2 = (a + 1) % n;
			int b2 = (b + 1) % m;
			double ax = x[a2] - x[a];
			double ay = y[a2] - y[a];
			double bx = other.x[b] - other.x[b2];
			double by = other.y[b] - other.y[b2];
			double turn = i >= n ? -1 : j >= m ? 1 : ax * by - ay * bx;
			if (turn >= 0) {
				px += ax;
				py += ay;
				a = a2;
				i++;
			}
			if (turn <= 0) {
				px += bx;
				py += by;
				b = b2;
				j++;
			}
		}
		return k == n + m ? new Convex(sx, sy)
				: new Convex(Arrays.copyOf(sx, k), Arrays.copyOf(sy, k));
	}

	/** The corner that is lowest, and leftmost among those; of the mirrored polygon for a sign of -1. */
	private static int lowest(double[] x, double[] y, int sign) {
		int least = 0;
		for (int i = 1; i < x.length; i++) {
			double dy = sign * (y[i] - y[least]);
			if (dy < 0 || dy == 0 && sign * (x[i] - x[least]) < 0) {
				least = i;
			}
		}
		return least;
	}
}
