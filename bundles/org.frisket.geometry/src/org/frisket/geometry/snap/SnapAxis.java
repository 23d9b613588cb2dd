package org.frisket.geometry.snap;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The lines that hold on one axis, found by bisection. */
final class SnapAxis {

	/** Shifts that differ by less are the same: what is left of adding and subtracting, in mm. */
	static final double SAME = 1e-7;

	private static final Comparator<SnapLine> ORDER = Comparator.comparingDouble(SnapLine::at)
			.thenComparing(SnapLine::kind);

	private final SnapLine[] lines;
	private final double[] places;
	private final double step;
	private final double from;
	private final double to;

	/**
	 * @param step of the grid, in mm; 0 for none
	 * @param from where the grid begins
	 * @param to   where it ends
	 */
	SnapAxis(List<SnapLine> lines, double step, double from, double to) {
		this.lines = merged(lines);
		this.step = step;
		this.from = from;
		this.to = to;
		places = Arrays.stream(this.lines).mapToDouble(SnapLine::at).toArray();
	}

	/** One of each place and kind, from the left to the right. */
	private static SnapLine[] merged(List<SnapLine> lines) {
		SnapLine[] sorted = lines.toArray(SnapLine[]::new);
		Arrays.sort(sorted, ORDER);
		List<SnapLine> merged = new ArrayList<>(sorted.length);
		for (SnapLine line : sorted) {
			int last = merged.size() - 1;
			if (last >= 0 && ORDER.compare(merged.get(last), line) == 0) {
				merged.set(last, merged.get(last).with(line));
			} else {
				merged.add(line);
			}
		}
		return merged.toArray(SnapLine[]::new);
	}

	/**
	 * What holds one of the anchors, the nearest first, then by kind, then the anchor that comes first, then the lower
	 * line; null if nothing is within reach.
	 *
	 * @param node a hold that a node offers; null for none
	 */
	SnapHold nearest(List<Double> anchors, double reach, SnapHold node) {
		double least = node == null ? reach : Math.abs(node.shift());
		for (double anchor : anchors) {
			least = Math.min(least, distance(anchor));
		}
		SnapHold best = node != null && Math.abs(node.shift()) <= least + SAME ? node : null;
		for (double anchor : anchors) {
			for (double side : least < SAME ? new double[] { 0 } : new double[] { -least, least }) {
				best = better(best, onLines(anchor, side), least);
				best = better(best, onGrid(anchor), least);
			}
		}
		return best;
	}

	private static SnapHold better(SnapHold best, SnapHold other, double least) {
		if (other == null || Math.abs(other.shift()) > least + SAME) {
			return best;
		}
		return best == null || other.kind().compareTo(best.kind()) < 0 ? other : best;
	}

	/** How far the nearest line or line of the grid is. */
	private double distance(double anchor) {
		int at = floor(anchor);
		double distance = Double.POSITIVE_INFINITY;
		if (at >= 0) {
			distance = anchor - places[at];
		}
		if (at + 1 < places.length) {
			distance = Math.min(distance, places[at + 1] - anchor);
		}
		SnapHold grid = onGrid(anchor);
		return grid == null ? distance : Math.min(distance, Math.abs(grid.shift()));
	}

	/** The first kind of the lines at {@code anchor + side}. */
	private SnapHold onLines(double anchor, double side) {
		SnapHold best = null;
		for (int i = floor(anchor + side - SAME) + 1; i < places.length && places[i] <= anchor + side + SAME; i++) {
			if (best == null || lines[i].kind().compareTo(best.kind()) < 0) {
				best = new SnapHold(places[i] - anchor, lines[i]);
			}
		}
		return best;
	}

	private SnapHold onGrid(double anchor) {
		if (step == 0) {
			return null;
		}
		double line = Math.rint(anchor / step) * step;
		return line < from - SAME || line > to + SAME ? null
				: new SnapHold(line - anchor, SnapLine.endless(line, SnapKind.GRID));
	}

	/** Index of the last line at or before a place; -1 if there is none. */
	private int floor(double place) {
		int low = 0;
		int high = places.length;
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (places[middle] <= place) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low - 1;
	}
}
