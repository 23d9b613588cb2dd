package org.frisket.geometry.axis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How many ends of strokes meet at each node. */
record Degrees(Map<Integer, Integer> ends) {

	static Degrees of(List<Stroke> strokes) {
		Map<Integer, Integer> ends = new HashMap<>();
		for (Stroke stroke : strokes) {
			ends.merge(stroke.from(), 1, Integer::sum);
			ends.merge(stroke.to(), 1, Integer::sum);
		}
		return new Degrees(ends);
	}

	int of(int node) {
		return ends.getOrDefault(node, 0);
	}
}
