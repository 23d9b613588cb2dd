package org.frisket.toolpath.order;

/** The first order: from each stop to the nearest that need not wait. */
final class Beginning {

	private Beginning() {
	}

	static void of(Sequence sequence, Neighbours neighbours) {
		Stops stops = sequence.stops;
		int n = sequence.n;
		int[] order = sequence.order;
		int[] waits = new int[n];
		for (int i = 0; i < n; i++) {
			waits[i] = sequence.before[i].length;
		}
		boolean[] made = new boolean[n];
		int[] open = new int[n];
		int size = 0;
		for (int i = 0; i < n; i++) {
			if (waits[i] == 0) {
				open[size++] = i;
			}
		}
		double x = sequence.startX;
		double y = sequence.startY;
		for (int at = 0; at < n; at++) {
			int best = -1;
			double least = Double.POSITIVE_INFINITY;
			int last = at == 0 ? -1 : order[at - 1];
			if (last >= 0) {
				for (int next : neighbours.of(last)) {
					double d = made[next] || waits[next] > 0 ? Double.POSITIVE_INFINITY : stops.nearest(next, x, y);
					if (d < least) {
						least = d;
						best = next;
					}
				}
			}
			if (best < 0) {
				int kept = 0;
				for (int i = 0; i < size; i++) {
					if (!made[open[i]]) {
						open[kept++] = open[i];
						double d = stops.nearest(open[i], x, y);
						if (d < least) {
							least = d;
							best = open[i];
						}
					}
				}
				size = kept;
			}
			made[best] = true;
			order[at] = best;
			sequence.place[best] = at;
			sequence.turned[best] = Sequence.way(x, y, stops.outX[best], stops.outY[best]) < Sequence.way(x, y, stops.inX[best], stops.inY[best]);
			x = sequence.leaveX(best);
			y = sequence.leaveY(best);
			int next = stops.after[best];
			if (next >= 0 && --waits[next] == 0) {
				open[size++] = next;
			}
		}
	}
}
