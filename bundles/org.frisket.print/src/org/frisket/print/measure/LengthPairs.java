package org.frisket.print.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Point;

/** Which lengths between marks are worth measuring. */
public final class LengthPairs {

	/** Of so many marks all lengths are measured: six of four, ten of five. */
	private static final int ALL = 5;
	/** To so many others each further mark is measured; two settle it, the third shows a slip. */
	private static final int EACH = 3;

	/** Two marks, the lower first, from 0. */
	public record Pair(int one, int other) {
	}

	private LengthPairs() {
	}

	/**
	 * More than the places of the marks need, so that a slip shows: all between the first five marks, and from each further one
	 * those to the three before it that are the farthest away, for a long length tells a direction the best.
	 */
	public static List<Pair> of(List<Point> marks) {
		List<Pair> pairs = new ArrayList<>();
		for (int i = 0; i < Math.min(ALL, marks.size()); i++) {
			for (int j = i + 1; j < Math.min(ALL, marks.size()); j++) {
				pairs.add(new Pair(i, j));
			}
		}
		for (int i = ALL; i < marks.size(); i++) {
			Point mark = marks.get(i);
			List<Integer> others = new ArrayList<>();
			for (int j = 0; j < i; j++) {
				others.add(j);
			}
			others.sort(Comparator.comparingDouble((Integer j) -> -marks.get(j).distance(mark)).thenComparing(j -> j));
			for (int j : others.subList(0, EACH).stream().sorted().toList()) {
				pairs.add(new Pair(j, i));
			}
		}
		return pairs;
	}
}
