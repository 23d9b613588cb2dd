package org.frisket.material.trials;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The largest block of good cells that hang together side by side. Its centre is the cell farthest from anything that
 * did not go well or was not tried, so that a little more or less of either parameter still works; among several, the
 * one nearest to the middle of the block.
 *
 * @param cells  row by row
 * @param margin steps from the centre to the nearest cell that is not known to be good; at least 1
 */
public record GoodWindow(List<CellPlace> cells, CellPlace centre, int margin) {

	private static final int[][] SIDES = { { 1, 0 }, { -1, 0 }, { 0, 1 }, { 0, -1 } };

	public GoodWindow {
		cells = List.copyOf(cells);
	}

	static Optional<GoodWindow> of(TestSheet sheet) {
		List<CellPlace> best = List.of();
		Set<CellPlace> seen = new HashSet<>();
		for (CellPlace place : sheet.places()) {
			if (isGood(sheet, place) && seen.add(place)) {
				List<CellPlace> block = block(sheet, place, seen);
				best = block.size() > best.size() ? block : best;
			}
		}
		return best.isEmpty() ? Optional.empty() : Optional.of(around(best));
	}

	private static boolean isGood(TestSheet sheet, CellPlace place) {
		return sheet.verdict(place).filter(Verdict::isGood).isPresent();
	}

	private static List<CellPlace> block(TestSheet sheet, CellPlace from, Set<CellPlace> seen) {
		List<CellPlace> block = new ArrayList<>();
		Deque<CellPlace> open = new ArrayDeque<>(List.of(from));
		while (!open.isEmpty()) {
			CellPlace place = open.poll();
			block.add(place);
			for (int[] side : SIDES) {
				CellPlace next = new CellPlace(place.column() + side[0], place.row() + side[1]);
				if (isGood(sheet, next) && seen.add(next)) {
					open.add(next);
				}
			}
		}
		block.sort(null);
		return block;
	}

	private static GoodWindow around(List<CellPlace> cells) {
		Set<CellPlace> block = new HashSet<>(cells);
		double column = cells.stream().mapToInt(CellPlace::column).average().orElseThrow();
		double row = cells.stream().mapToInt(CellPlace::row).average().orElseThrow();
		CellPlace centre = null;
		int margin = 0;
		double distance = 0;
		for (CellPlace place : cells) {
			int depth = depth(place, block);
			double away = Math.hypot(place.column() - column, place.row() - row);
			if (depth > margin || depth == margin && away < distance) {
				centre = place;
				margin = depth;
				distance = away;
			}
		}
		return new GoodWindow(cells, centre, margin);
	}

	/** The least number of steps along columns and rows that leads out of the block. */
	private static int depth(CellPlace place, Set<CellPlace> block) {
		for (int steps = 1;; steps++) {
			for (int across = -steps; across <= steps; across++) {
				int down = steps - Math.abs(across);
				if (!block.contains(new CellPlace(place.column() + across, place.row() + down))
						|| !block.contains(new CellPlace(place.column() + across, place.row() - down))) {
					return steps;
				}
			}
		}
	}
}
