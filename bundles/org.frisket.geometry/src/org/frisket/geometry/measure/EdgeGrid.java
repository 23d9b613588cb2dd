package org.frisket.geometry.measure;

import java.util.Arrays;

import org.frisket.geometry.Point;

/** Straight edges sorted into square cells, to find the one nearest to a place. For one thread. */
final class EdgeGrid {

	private static final int MOST_CELLS = 4096;

	private final double[] ax;
	private final double[] ay;
	private final double[] bx;
	private final double[] by;
	private final double minX;
	private final double minY;
	private final double cell;
	private final int columns;
	private final int rows;
	/** Edges of cell i are those from {@code first[i]} to {@code first[i + 1]} in {@code edges}. */
	private final int[] first;
	private final int[] edges;
	private final int[] seen;
	private int question;

	private double nearestX;
	private double nearestY;

	/** Edge i runs from a to b. */
	EdgeGrid(double[] ax, double[] ay, double[] bx, double[] by) {
		this.ax = ax;
		this.ay = ay;
		this.bx = bx;
		this.by = by;
		minX = Arrays.stream(ax).min().orElse(0);
		minY = Arrays.stream(ay).min().orElse(0);
		double width = Arrays.stream(ax).max().orElse(0) - minX;
		double height = Arrays.stream(ay).max().orElse(0) - minY;
		int wanted = Math.max(1, Math.min(MOST_CELLS, 2 * ax.length));
		double side = Math.sqrt(width * height / wanted);
		cell = Math.max(side, Math.max(width, height) / wanted) + Double.MIN_NORMAL;
		columns = (int) (width / cell) + 1;
		rows = (int) (height / cell) + 1;
		first = new int[columns * rows + 1];
		for (int i = 0; i < ax.length; i++) {
			int edge = i;
			forCells(edge, at -> first[at + 1]++);
		}
		for (int i = 1; i < first.length; i++) {
			first[i] += first[i - 1];
		}
		edges = new int[first[first.length - 1]];
		int[] filled = first.clone();
		for (int i = 0; i < ax.length; i++) {
			int edge = i;
			forCells(edge, at -> edges[filled[at]++] = edge);
		}
		seen = new int[ax.length];
	}

	private interface Cell {
		void at(int index);
	}

	/** All cells of the edge's box; edges are short against the cells, but for long straight ones. */
	private void forCells(int edge, Cell visit) {
		int left = column(Math.min(ax[edge], bx[edge]));
		int right = column(Math.max(ax[edge], bx[edge]));
		int top = row(Math.min(ay[edge], by[edge]));
		int bottom = row(Math.max(ay[edge], by[edge]));
		for (int y = top; y <= bottom; y++) {
			for (int x = left; x <= right; x++) {
				visit.at(y * columns + x);
			}
		}
	}

	private int column(double x) {
		return Math.max(0, Math.min(columns - 1, (int) ((x - minX) / cell)));
	}

	private int row(double y) {
		return Math.max(0, Math.min(rows - 1, (int) ((y - minY) / cell)));
	}

	/**
	 * The edge that is nearest to a place and nearer than {@code within}; -1 if there is none. The nearest point of it is
	 * then {@link #nearestX()}, {@link #nearestY()}.
	 */
	int nearest(double x, double y, double within) {
		question++;
		double best = within * within;
		int found = -1;
		int homeX = column(x);
		int homeY = row(y);
		int reach = (int) Math.ceil(within / cell) + 1;
		for (int ring = 0; ring <= reach; ring++) {
			// what is farther out than this ring begins at least so far away
			if (ring > 1 && (ring - 1) * cell * ((ring - 1) * cell) > best) {
				break;
			}
			int top = homeY - ring;
			int bottom = homeY + ring;
			for (int row = Math.max(0, top); row <= Math.min(rows - 1, bottom); row++) {
				int step = row == top || row == bottom ? 1 : 2 * ring;
				for (int column = homeX - ring; column <= homeX + ring; column += Math.max(1, step)) {
					if (column < 0 || column >= columns) {
						continue;
					}
					int at = row * columns + column;
					for (int k = first[at]; k < first[at + 1]; k++) {
						int edge = edges[k];
						if (seen[edge] == question) {
							continue;
						}
						seen[edge] = question;
						double dx = bx[edge] - ax[edge];
						double dy = by[edge] - ay[edge];
						double along = ((x - ax[edge]) * dx + (y - ay[edge]) * dy) / (dx * dx + dy * dy);
						double t = along > 0 ? Math.min(along, 1) : 0;
						double px = ax[edge] + t * dx;
						double py = ay[edge] + t * dy;
						double distance = (px - x) * (px - x) + (py - y) * (py - y);
						if (distance < best) {
							best = distance;
							found = edge;
							nearestX = px;
							nearestY = py;
						}
					}
				}
			}
		}
		return found;
	}

	/** Whether some edge comes as near as {@code within} to a place and runs along a direction there, either way. */
	boolean runsAlong(Point place, Point direction, double within, double sine) {
		question++;
		for (int row = row(place.y() - within); row <= row(place.y() + within); row++) {
			for (int column = column(place.x() - within); column <= column(place.x() + within); column++) {
				int at = row * columns + column;
				for (int k = first[at]; k < first[at + 1]; k++) {
					int edge = edges[k];
					if (seen[edge] != question) {
						seen[edge] = question;
						if (runsAlong(edge, place, direction, within, sine)) {
							return true;
						}
					}
				}
			}
		}
		return false;
	}

	private boolean runsAlong(int edge, Point place, Point direction, double within, double sine) {
		double dx = bx[edge] - ax[edge];
		double dy = by[edge] - ay[edge];
		double length = Math.sqrt(dx * dx + dy * dy);
		if (Math.abs(direction.x() * dy - direction.y() * dx) > sine * length) {
			return false;
		}
		double along = ((place.x() - ax[edge]) * dx + (place.y() - ay[edge]) * dy) / (length * length);
		double t = along > 0 ? Math.min(along, 1) : 0;
		return place.distance(new Point(ax[edge] + t * dx, ay[edge] + t * dy)) <= within;
	}

	double nearestX() {
		return nearestX;
	}

	double nearestY() {
		return nearestY;
	}
}
