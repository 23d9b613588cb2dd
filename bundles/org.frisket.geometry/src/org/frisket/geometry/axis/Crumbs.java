package org.frisket.geometry.axis;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Bits of an axis that hang together with nothing, which rounding leaves where four samples lie on one circle: the axis
 * of one piece is all in one.
 */
final class Crumbs {

	private final Map<Integer, Integer> leaders = new HashMap<>();

	private Crumbs() {
	}

	/** Those strokes that belong to a part of the axis longer than its discs are wide; all if there is no such part. */
	static List<Stroke> without(List<Stroke> strokes) {
		Crumbs parts = new Crumbs();
		strokes.forEach(stroke -> parts.leaders.merge(parts.leader(stroke.from()), parts.leader(stroke.to()),
				(old, other) -> other));
		Map<Integer, Double> lengths = new HashMap<>();
		Map<Integer, Double> widths = new HashMap<>();
		for (Stroke stroke : strokes) {
			int part = parts.leader(stroke.from());
			lengths.merge(part, stroke.length(), Double::sum);
			widths.merge(part, 2 * Math.max(stroke.first().radius(), stroke.last().radius()), Math::max);
		}
		List<Stroke> kept = strokes.stream().filter(stroke -> {
			int part = parts.leader(stroke.from());
			return lengths.get(part) > widths.get(part);
		}).toList();
		return kept.isEmpty() ? strokes : kept;
	}

	private int leader(int node) {
		int at = node;
		while (leaders.getOrDefault(at, at) != at) {
			at = leaders.get(at);
		}
		return at;
	}
}
