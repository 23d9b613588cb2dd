package org.frisket.toolpath.order;

import java.util.Arrays;

/**
 * The shortest way through a few stops: for each set of stops and each that may be the last of them, the shortest way
 * there is (Held and Karp, A dynamic programming approach to sequencing problems, 1962; from memory). Of equal ways the
 * one on which the first stops come first.
 */
final class Exhaustive {

	/** The work doubles with each stop. */
	static final int MOST = 9;

	private final Sequence sequence;
	private final Stops stops;
	private final int n;
	/** By set, and by twice the last stop and one more if it is turned. */
	private final double[][] least;
	private final int[][] from;

	Exhaustive(Sequence sequence) {
		this.sequence = sequence;
		stops = sequence.stops;
		n = sequence.n;
		least = new double[1 << n][2 * n];
		from = new int[1 << n][2 * n];
	}

	/** Puts the stops into their order. */
	void apply() {
		if (n == 0) {
			return;
		}
		int[] before = new int[n];
		for (int i = 0; i < n; i++) {
			for (int earlier : sequence.before[i]) {
				before[i] |= 1 << earlier;
			}
		}
		for (double[] each : least) {
			Arrays.fill(each, Double.POSITIVE_INFINITY);
		}
		for (int set = 0; set < (1 << n) - 1; set++) {
			for (int next = 0; next < n; next++) {
				if ((set & 1 << next) == 0 && (before[next] & ~set) == 0) {
					extend(set, 2 * next);
					extend(set, 2 * next + 1);
				}
			}
		}
		trace();
	}

	private void extend(int set, int next) {
		double x = enterX(next);
		double y = enterY(next);
		double best = Double.POSITIVE_INFINITY;
		int last = -1;
		if (set == 0) {
			best = Sequence.way(sequence.startX, sequence.startY, x, y);
		}
		for (int state = 2 * n - 1; state >= 0 && set != 0; state--) {
			if (least[set][state] < best) {
				double way = least[set][state] + Sequence.way(enterX(state ^ 1), enterY(state ^ 1), x, y);
				if (way < best) {
					best = way;
					last = state;
				}
			}
		}
		int with = set | 1 << next / 2;
		least[with][next] = best;
		from[with][next] = last;
	}

	private void trace() {
		int set = (1 << n) - 1;
		int state = -1;
		double best = Double.POSITIVE_INFINITY;
		for (int last = 2 * n - 1; last >= 0; last--) {
			double on = sequence.ends ? Sequence.way(enterX(last ^ 1), enterY(last ^ 1), sequence.endX, sequence.endY) : 0;
			if (least[set][last] + on < best) {
				best = least[set][last] + on;
				state = last;
			}
		}
		for (int at = n - 1; at >= 0; at--) {
			int stop = state / 2;
			sequence.order[at] = stop;
			sequence.place[stop] = at;
			sequence.turned[stop] = state % 2 == 1;
			int earlier = from[set][state];
			set &= ~(1 << stop);
			state = earlier;
		}
	}

	/** Where a stop is entered; where it is left is where it is entered turned. */
	private double enterX(int state) {
		return state % 2 == 0 ? stops.inX[state / 2] : stops.outX[state / 2];
	}

	private double enterY(int state) {
		return state % 2 == 0 ? stops.inY[state / 2] : stops.outY[state / 2];
	}
}
