package org.frisket.sheets;

import java.util.Arrays;

/** Which of many things belong together: a forest of sets that are united pair by pair. */
final class Bonds {

	private final int[] above;

	Bonds(int count) {
		above = new int[count];
		Arrays.setAll(above, i -> i);
	}

	/** The lowest number of all that belong together with this one. */
	int first(int one) {
		int at = one;
		while (above[at] != at) {
			above[at] = above[above[at]];
			at = above[at];
		}
		return at;
	}

	void unite(int one, int other) {
		int a = first(one);
		int b = first(other);
		above[Math.max(a, b)] = Math.min(a, b);
	}
}
