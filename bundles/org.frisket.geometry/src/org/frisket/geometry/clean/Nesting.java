package org.frisket.geometry.clean;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Which ring lies directly in which, for rings that do not cross. */
final class Nesting {

	/** The rings, every one after the ring around it. */
	final List<Ring> rings;
	private final int[] parent;

	Nesting(List<Ring> unordered) {
		rings = new ArrayList<>(unordered);
		rings.sort(Comparator.comparingDouble(r -> -Math.abs(r.area)));
		parent = new int[rings.size()];
		for (int i = 0; i < parent.length; i++) {
			int j = i - 1;
			while (j >= 0 && !rings.get(j).holds(rings.get(i))) {
				j--;
			}
			parent[i] = j;
		}
	}

	/** Number of the ring around a ring, -1 if there is none. */
	int parent(int ring) {
		return parent[ring];
	}
}
