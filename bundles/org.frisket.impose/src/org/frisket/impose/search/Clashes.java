package org.frisket.impose.search;

import java.util.Arrays;

/**
 * How much each two parts of an arrangement overlap, and how much that counts by now: the weight of two that stay in each
 * other's way grows from round to round, until another place is better for one of them (guided local search: Voudouris
 * and Tsang 1999, for packing Egeblad, Nielsen and Odgaard 2007; from memory).
 */
final class Clashes {

	private static final double DECAY = 0.95;
	private static final double LEAST_GROWTH = 1.2;
	private static final double MOST_GROWTH = 2.0;

	private final Arrangement at;
	private final int n;
	/** Row by row, symmetrical: the depth by the size of the two. */
	private final float[] loss;
	private final float[] weight;

	Clashes(Arrangement at) {
		this.at = at;
		n = at.parts();
		loss = new float[n * n];
		weight = new float[n * n];
		forget();
	}

	/** All overlaps count alike again. */
	void forget() {
		Arrays.fill(weight, 1);
	}

	double weight(int p, int q) {
		return weight[p * n + q];
	}

	void measure() {
		for (int p = 0; p < n; p++) {
			for (int q = Math.max(p + 1, at.fixed); q < n; q++) {
				measure(p, q);
			}
		}
	}

	/** After a part has moved. */
	void measure(int p) {
		for (int q = 0; q < n; q++) {
			if (q != p) {
				measure(p, q);
			}
		}
	}

	private void measure(int p, int q) {
		double d = at.depth(p, q);
		double sized = d * at.shapes.weight[at.shape[p]] * at.shapes.weight[at.shape[q]];
		// the least overlap is one
		float f = d == 0 ? 0 : Math.max(Float.MIN_NORMAL, (float) sized);
		loss[p * n + q] = f;
		loss[q * n + p] = f;
	}

	/** Of all overlaps of a part, by weight. */
	double weighted(int p) {
		double sum = 0;
		for (int i = p * n, end = i + n; i < end; i++) {
			sum += loss[i] * weight[i];
		}
		return sum;
	}

	boolean clashes(int p) {
		for (int i = p * n, end = i + n; i < end; i++) {
			if (loss[i] > 0) {
				return true;
			}
		}
		return false;
	}

	/** Of all overlaps; 0 if there are none. */
	double total() {
		double sum = 0;
		for (float d : loss) {
			sum += d;
		}
		return sum / 2;
	}

	/** The next round: what overlaps counts more, what does not is forgotten by and by. */
	void reweigh() {
		float most = 0;
		for (float d : loss) {
			most = Math.max(most, d);
		}
		for (int i = 0; i < loss.length; i++) {
			if (loss[i] > 0) {
				weight[i] *= (float) (LEAST_GROWTH + (MOST_GROWTH - LEAST_GROWTH) * loss[i] / most);
			} else if (weight[i] > 1) {
				weight[i] = (float) Math.max(1, weight[i] * DECAY);
			}
		}
	}
}
