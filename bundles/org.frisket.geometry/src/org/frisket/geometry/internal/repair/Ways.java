package org.frisket.geometry.internal.repair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of a line, by the length of the way to their ends; sorted, and apart from each other. */
record Ways(List<Way> ways) {

	/** From smaller to larger, in mm. */
	record Way(double from, double to) {

		double length() {
			return to - from;
		}
	}

	/** Put together where they overlap, or where no more than a slack is between them. */
	static Ways united(List<Way> parts, double slack) {
		List<Way> sorted = new ArrayList<>(parts);
		sorted.sort(Comparator.comparingDouble(Way::from).thenComparingDouble(Way::to));
		List<Way> united = new ArrayList<>();
		for (Way way : sorted) {
			int last = united.size() - 1;
			if (last >= 0 && way.from <= united.get(last).to + slack) {
				united.set(last, new Way(united.get(last).from, Math.max(united.get(last).to, way.to)));
			} else {
				united.add(way);
			}
		}
		return new Ways(united);
	}

	/** The one that holds all of another; null if none does. */
	Way around(Way part, double slack) {
		for (Way way : ways) {
			if (way.from <= part.from + slack && way.to >= part.to - slack) {
				return way;
			}
		}
		return null;
	}
}
