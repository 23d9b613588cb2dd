package org.frisket.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** A sheet in small cells, of which each that a shape comes into is taken: where large free rectangles are, roughly. */
final class FreeCells {

	private static final double FINEST_MM = 0.25;
	private static final double MOST_CELLS = 2e6;

	/** Cells from a left upper one to a right lower one, which is not in it any more. */
	private record Cells(int left, int top, int right, int bottom) {

		long count() {
			return (long) (right - left) * (bottom - top);
		}
	}

	private final int columns;
	private final int rows;
	private final double cellWidth;
	private final double cellHeight;
	private final boolean[] taken;

	FreeCells(double width, double height) {
		double cell = Math.max(FINEST_MM, Math.sqrt(width * height / MOST_CELLS));
		columns = (int) Math.ceil(width / cell);
		rows = (int) Math.ceil(height / cell);
		cellWidth = width / columns;
		cellHeight = height / rows;
		taken = new boolean[columns * rows];
	}

	/** In mm. */
	double cell() {
		return Math.max(cellWidth, cellHeight);
	}

	void take(Polygon polygon) {
		List<List<Double>> crossings = new ArrayList<>();
		for (int row = 0; row < rows; row++) {
			crossings.add(null);
		}
		take(polygon.getExteriorRing(), crossings);
		for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
			take(polygon.getInteriorRingN(i), crossings);
		}
		for (int row = 0; row < rows; row++) {
			List<Double> at = crossings.get(row);
			if (at != null) {
				at.sort(Comparator.naturalOrder());
				for (int i = 0; i + 1 < at.size(); i += 2) {
					// cells whose middle is within; those that an edge comes into are taken already
					int from = Math.max(0, (int) Math.ceil(at.get(i) / cellWidth - 0.5));
					int to = Math.min(columns, (int) Math.floor(at.get(i + 1) / cellWidth - 0.5) + 1);
					if (from < to) {
						Arrays.fill(taken, row * columns + from, row * columns + to, true);
					}
				}
			}
		}
	}

	private void take(LinearRing ring, List<List<Double>> crossings) {
		CoordinateSequence points = ring.getCoordinateSequence();
		for (int i = 0; i + 1 < points.size(); i++) {
			take(points.getX(i), points.getY(i), points.getX(i + 1), points.getY(i + 1), crossings);
		}
	}

	private void take(double x1, double y1, double x2, double y2, List<List<Double>> crossings) {
		int first = Math.max(0, (int) Math.floor(Math.min(y1, y2) / cellHeight));
		int last = Math.min(rows - 1, (int) Math.floor(Math.max(y1, y2) / cellHeight));
		for (int row = first; row <= last; row++) {
			double a = at(x1, y1, x2, y2, row * cellHeight);
			double b = at(x1, y1, x2, y2, (row + 1) * cellHeight);
			int from = Math.max(0, (int) Math.floor(Math.min(a, b) / cellWidth));
			int to = Math.min(columns - 1, (int) Math.floor(Math.max(a, b) / cellWidth));
			if (y1 == y2) {
				from = Math.max(0, (int) Math.floor(Math.min(x1, x2) / cellWidth));
				to = Math.min(columns - 1, (int) Math.floor(Math.max(x1, x2) / cellWidth));
			}
			if (from <= to) {
				Arrays.fill(taken, row * columns + from, row * columns + to + 1, true);
			}
			double middle = (row + 0.5) * cellHeight;
			if (y1 <= middle != y2 <= middle) {
				if (crossings.get(row) == null) {
					crossings.set(row, new ArrayList<>());
				}
				crossings.get(row).add(x1 + (x2 - x1) * (middle - y1) / (y2 - y1));
			}
		}
	}

	/** The x of an edge at a height, or at the end that is nearer to it. */
	private static double at(double x1, double y1, double x2, double y2, double y) {
		if (y1 == y2) {
			return x1;
		}
		double t = (y - y1) / (y2 - y1);
		return x1 + (x2 - x1) * Math.max(0, Math.min(1, t));
	}

	/** The largest free rectangles, the largest first, in mm: left, top, right, bottom. */
	List<double[]> largest(int most) {
		List<Cells> best = new ArrayList<>();
		int[] free = new int[columns + 1];
		for (int row = 0; row < rows; row++) {
			for (int column = 0; column < columns; column++) {
				free[column] = taken[row * columns + column] ? 0 : free[column] + 1;
			}
			Cells found = endingAt(row + 1, free);
			if (found.count() > 0) {
				Cells above = best.isEmpty() ? found : best.get(best.size() - 1);
				if (above != found && above.left == found.left && above.right == found.right && above.top == found.top) {
					// it is only a part of this one
					best.remove(best.size() - 1);
				}
				best.add(found);
			}
		}
		return best.stream().sorted(Comparator.comparingLong(Cells::count).reversed()).limit(most)
				.map(each -> new double[] { each.left * cellWidth, each.top * cellHeight, each.right * cellWidth,
						each.bottom * cellHeight })
				.toList();
	}

	/** The largest of those whose lower edge is at a row. @param free how many cells are free above it, by columns */
	private Cells endingAt(int bottom, int[] free) {
		Cells best = new Cells(0, bottom, 0, bottom);
		Deque<Integer> rising = new ArrayDeque<>();
		for (int column = 0; column <= columns; column++) {
			while (!rising.isEmpty() && free[rising.peek()] >= free[column]) {
				int height = free[rising.pop()];
				Cells each = new Cells(rising.isEmpty() ? 0 : rising.peek() + 1, bottom - height, column, bottom);
				best = each.count() > best.count() ? each : best;
			}
			rising.push(column);
		}
		return best;
	}
}
