package org.frisket.impose.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.impose.shape.Convex;
import org.frisket.impose.shape.Solid;

/**
 * Where a second part may not lie, seen from a first, and how deep the two are in each other there: the least way by which
 * one of them comes clear. For a displacement of the second that is the distance to the rim of the union of convex
 * polygons, one for each pair of pieces. A grid over it knows for each cell which few edges can decide there, so that a
 * question costs some nanoseconds however many pieces there are.
 */
public final class NoFit {

	/** Cells over the whole box; more make questions faster and the field larger. */
	static final int CELLS = 800;
	/** Where each field of very many is asked for few places. */
	static final int FEW_CELLS = 100;
	/** Keeps a place just within the box from the cell beyond. */
	private static final double ROUNDING = 1 - 1e-12;

	private final Edges edges;
	private final double minX;
	private final double minY;
	private final double maxX;
	private final double maxY;
	private final double perX;
	private final double perY;
	private final int columns;
	private final int rows;
	/** For each cell the polygons that can cover a place in it, one after the other: how many edges, then these. */
	private final int[] start;
	private final int[] covering;
	/** The rim and what of it can be nearest in each cell: made when first asked for. */
	private volatile Depths depths;

	private final class Depths {

		final Rim rim = new Rim(edges, Math.max(maxX - minX, maxY - minY));
		final int[] start = new int[columns * rows + 1];
		final int[] nearest;

		Depths() {
			double cell = Math.sqrt(1 / (perX * perX) + 1 / (perY * perY));
			int[] out = new int[4 * start.length];
			double[] distance = new double[rim.size];
			int used = 0;
			for (int row = 0; row < rows; row++) {
				double y = minY + (row + 0.5) / perY;
				for (int column = 0; column < columns; column++) {
					int c = row * columns + column;
					start[c] = used;
					if (NoFit.this.start[c] == NoFit.this.start[c + 1]) {
						continue;
					}
					double x = minX + (column + 0.5) / perX;
					double least = Double.POSITIVE_INFINITY;
					for (int i = 0; i < rim.size; i++) {
						distance[i] = rim.distance2(i, x, y);
						least = Math.min(least, distance[i]);
					}
					double far = Math.sqrt(least) + cell;
					far *= far;
					if (used + rim.size > out.length) {
						out = Arrays.copyOf(out, 2 * (used + rim.size));
					}
					for (int i = 0; i < rim.size; i++) {
						if (distance[i] <= far) {
							out[used++] = i;
						}
					}
				}
			}
			start[columns * rows] = used;
			nearest = Arrays.copyOf(out, used);
		}
	}

	/** @param slack by how much more than touching the parts keep apart */
	public NoFit(Solid first, Solid second, double slack) {
		this(first, second, slack, CELLS);
	}

	/** @param cells of the grid: they decide how long a question takes, not what the answer is */
	NoFit(Solid first, Solid second, double slack, int cells) {
		List<Convex> meetings = new ArrayList<>();
		for (Convex a : first.pieces()) {
			for (Convex b : second.pieces()) {
				meetings.add(a.meeting(b));
			}
		}
		edges = new Edges(meetings, slack);
		minX = first.minX() - second.maxX() - slack;
		minY = first.minY() - second.maxY() - slack;
		maxX = first.maxX() - second.minX() + slack;
		maxY = first.maxY() - second.minY() + slack;
		double side = Math.sqrt((maxX - minX) * (maxY - minY) / cells);
		columns = (int) Math.max(1, Math.min(cells, Math.ceil((maxX - minX) / side)));
		rows = (int) Math.max(1, Math.min(cells, Math.ceil((maxY - minY) / side)));
		perX = columns * ROUNDING / (maxX - minX);
		perY = rows * ROUNDING / (maxY - minY);
		start = new int[columns * rows + 1];
		covering = cover();
	}

	private int[] cover() {
		double half = 0.5 * Math.sqrt(1 / (perX * perX) + 1 / (perY * perY));
		int polygons = edges.polygons();
		double[][] boxes = new double[polygons][];
		for (int k = 0; k < polygons; k++) {
			boxes[k] = box(k, half);
		}
		int[] out = new int[16 * start.length];
		int used = 0;
		double[] depth = new double[polygons];
		int[] near = new int[polygons];
		for (int row = 0; row < rows; row++) {
			double y = minY + (row + 0.5) / perY;
			for (int column = 0; column < columns; column++) {
				double x = minX + (column + 0.5) / perX;
				start[row * columns + column] = used;
				int count = 0;
				double best = -half;
				for (int k = 0; k < polygons; k++) {
					double[] box = boxes[k];
					if (x < box[0] || x > box[2] || y < box[1] || y > box[3]) {
						continue;
					}
					double floor = Math.max(-half, best - 2 * half);
					double least = Double.POSITIVE_INFINITY;
					for (int e = edges.from[k]; e < edges.from[k + 1] && least >= floor; e++) {
						least = Math.min(least, edges.within(e, x, y));
					}
					if (least >= floor) {
						best = Math.max(best, least);
						depth[k] = least;
						near[count++] = k;
					}
				}
				if (best > half) {
					// one polygon covers the cell
					if (used + 1 > out.length) {
						out = Arrays.copyOf(out, 2 * used);
					}
					out[used++] = 0;
					continue;
				}
				for (int i = 0; i < count; i++) {
					int k = near[i];
					if (used + edges.from[k + 1] - edges.from[k] + 1 > out.length) {
						out = Arrays.copyOf(out, 2 * (used + edges.from[k + 1] - edges.from[k] + 1));
					}
					int head = used++;
					for (int e = edges.from[k]; e < edges.from[k + 1]; e++) {
						if (edges.within(e, x, y) <= half) {
							out[used++] = e;
						}
					}
					out[head] = used - head - 1;
				}
			}
		}
		start[rows * columns] = used;
		return Arrays.copyOf(out, used);
	}

	private double[] box(int polygon, double wider) {
		double[] box = { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
				Double.NEGATIVE_INFINITY };
		for (int e = edges.from[polygon]; e < edges.from[polygon + 1]; e++) {
			box[0] = Math.min(box[0], edges.x[e]);
			box[1] = Math.min(box[1], edges.y[e]);
			box[2] = Math.max(box[2], edges.x[e]);
			box[3] = Math.max(box[3], edges.y[e]);
		}
		// the corners between lines that lie further out
		return new double[] { box[0] - 2 * wider, box[1] - 2 * wider, box[2] + 2 * wider, box[3] + 2 * wider };
	}

	/** The cell of a place where the parts overlap; -1 where they do not. */
	private int overlapping(double dx, double dy) {
		if (!(dx > minX && dx < maxX && dy > minY && dy < maxY)) {
			return -1;
		}
		int cell = (int) ((dy - minY) * perY) * columns + (int) ((dx - minX) * perX);
		int i = start[cell];
		int end = start[cell + 1];
		next: while (i < end) {
			int stop = i + 1 + covering[i];
			for (i++; i < stop; i++) {
				if (edges.within(covering[i], dx, dy) <= 0) {
					i = stop;
					continue next;
				}
			}
			return cell;
		}
		return -1;
	}

	/** About how much memory it takes, once depths were asked for too. */
	long bytes() {
		return 16L * Double.BYTES * edges.size() + 2L * Integer.BYTES * (start.length + covering.length);
	}

	/** Whether the parts overlap there; quicker than how deep. */
	public boolean overlap(double dx, double dy) {
		return overlapping(dx, dy) >= 0;
	}

	private Depths depths() {
		Depths made = depths;
		if (made == null) {
			synchronized (this) {
				made = depths;
				if (made == null) {
					made = new Depths();
					depths = made;
				}
			}
		}
		return made;
	}

	/** How deep the parts are in each other, 0 if they do not overlap. */
	public double depth(double dx, double dy) {
		int cell = overlapping(dx, dy);
		if (cell < 0) {
			return 0;
		}
		Depths d = depths();
		double least = Double.POSITIVE_INFINITY;
		for (int i = d.start[cell], end = d.start[cell + 1]; i < end; i++) {
			least = Math.min(least, d.rim.distance2(d.nearest[i], dx, dy));
		}
		return Math.max(Math.sqrt(least), Double.MIN_NORMAL);
	}

	/**
	 * The least way by which the second part comes clear of the first.
	 *
	 * @param way its x and y are put here
	 * @return its length, 0 if the parts do not overlap
	 */
	public double clear(double dx, double dy, double[] way) {
		int cell = overlapping(dx, dy);
		if (cell < 0) {
			return 0;
		}
		Depths d = depths();
		double least = Double.POSITIVE_INFINITY;
		int nearest = -1;
		for (int i = d.start[cell], end = d.start[cell + 1]; i < end; i++) {
			double distance = d.rim.distance2(d.nearest[i], dx, dy);
			if (distance < least) {
				least = distance;
				nearest = d.nearest[i];
			}
		}
		d.rim.way(nearest, dx, dy, way);
		return Math.max(Math.sqrt(least), Double.MIN_NORMAL);
	}
}
