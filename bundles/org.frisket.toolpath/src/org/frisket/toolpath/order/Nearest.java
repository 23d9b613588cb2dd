package org.frisket.toolpath.order;

import java.util.Arrays;

/** For each stop the nearest others, by the nearer of their ends. */
final class Nearest {

	private static final double PER_CELL = 2;

	private final Stops stops;
	private final int most;
	private final double minX;
	private final double minY;
	private final double perCell;
	private final int columns;
	private final int rows;
	/** By cell: twice the stop, and one more for where it is left. */
	private final int[] start;
	private final int[] ends;

	Nearest(Stops stops, int most) {
		this.stops = stops;
		this.most = Math.min(most, stops.count - 1);
		double x0 = Double.POSITIVE_INFINITY;
		double y0 = Double.POSITIVE_INFINITY;
		double x1 = Double.NEGATIVE_INFINITY;
		double y1 = Double.NEGATIVE_INFINITY;
		for (int e = 0; e < 2 * stops.count; e++) {
			x0 = Math.min(x0, x(e));
			y0 = Math.min(y0, y(e));
			x1 = Math.max(x1, x(e));
			y1 = Math.max(y1, y(e));
		}
		minX = x0;
		minY = y0;
		double size = Math.max(Math.max(x1 - x0, y1 - y0), 1e-9);
		double cells = Math.max(1, stops.count / PER_CELL);
		perCell = Math.max(Math.sqrt(Math.max((x1 - x0) * (y1 - y0), size * size / cells) / cells), size / 2000);
		columns = (int) ((x1 - x0) / perCell) + 1;
		rows = (int) ((y1 - y0) / perCell) + 1;
		start = new int[columns * rows + 1];
		for (int e = 0; e < 2 * stops.count; e++) {
			start[cell(e) + 1]++;
		}
		for (int c = 0; c < columns * rows; c++) {
			start[c + 1] += start[c];
		}
		int[] at = Arrays.copyOf(start, start.length);
		ends = new int[2 * stops.count];
		for (int e = 0; e < 2 * stops.count; e++) {
			ends[at[cell(e)]++] = e;
		}
	}

	private double x(int end) {
		return end % 2 == 0 ? stops.inX[end / 2] : stops.outX[end / 2];
	}

	private double y(int end) {
		return end % 2 == 0 ? stops.inY[end / 2] : stops.outY[end / 2];
	}

	private int cell(int end) {
		return (int) ((y(end) - minY) / perCell) * columns + (int) ((x(end) - minX) / perCell);
	}

	int[] of(int stop) {
		int[] found = new int[most];
		double[] distance = new double[most];
		int count = 0;
		for (int end = 2 * stop; end <= 2 * stop + 1; end++) {
			int column = (int) ((x(end) - minX) / perCell);
			int row = (int) ((y(end) - minY) / perCell);
			for (int ring = 0; ring <= Math.max(columns, rows); ring++) {
				// nothing beyond this ring is nearer than its inner side
				if (count == most && most > 0 && distance[most - 1] <= (ring - 1) * perCell) {
					break;
				}
				for (int r = Math.max(0, row - ring); r <= Math.min(rows - 1, row + ring); r++) {
					boolean whole = Math.abs(r - row) == ring;
					for (int c = column - ring; c <= column + ring; c += whole || ring == 0 ? 1 : 2 * ring) {
						if (c >= 0 && c < columns) {
							count = take(stop, end, r * columns + c, found, distance, count);
						}
					}
				}
			}
		}
		return Arrays.copyOf(found, count);
	}

	private int take(int stop, int end, int cell, int[] found, double[] distance, int count) {
		int size = count;
		for (int i = start[cell]; i < start[cell + 1]; i++) {
			int other = ends[i] / 2;
			if (other == stop) {
				continue;
			}
			double d = Math.hypot(x(ends[i]) - x(end), y(ends[i]) - y(end));
			int place = indexOf(found, size, other);
			if (place >= 0) {
				if (d >= distance[place]) {
					continue;
				}
			} else if (size < most) {
				place = size++;
			} else if (d < distance[most - 1]) {
				place = most - 1;
			} else {
				continue;
			}
			for (; place > 0 && distance[place - 1] > d; place--) {
				found[place] = found[place - 1];
				distance[place] = distance[place - 1];
			}
			found[place] = other;
			distance[place] = d;
		}
		return size;
	}

	private static int indexOf(int[] found, int size, int other) {
		for (int i = 0; i < size; i++) {
			if (found[i] == other) {
				return i;
			}
		}
		return -1;
	}
}
