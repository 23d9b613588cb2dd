package org.frisket.typography.join;

/** Which of several things hang together (disjoint sets). */
final class Groups {

	private final int[] leaders;

	Groups(int count) {
		leaders = new int[count];
		for (int i = 0; i < count; i++) {
			leaders[i] = i;
		}
	}

	private int leader(int i) {
		int at = i;
		while (leaders[at] != at) {
			leaders[at] = leaders[leaders[at]];
			at = leaders[at];
		}
		return at;
	}

	boolean areOne(int a, int b) {
		return leader(a) == leader(b);
	}

	void unite(int a, int b) {
		leaders[Math.max(leader(a), leader(b))] = Math.min(leader(a), leader(b));
	}
}
