package org.frisket.impose.fit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** The rim of a union of convex polygons: of each edge what no other polygon covers. */
final class Rim {

	/** Of the union's size: what lies so near to the inside of another polygon counts as covered. */
	private static final double NEAR = 1e-10;

	private final Edges edges;
	private final double near;
	double[] x = new double[64];
	double[] y = new double[64];
	double[] toX = new double[64];
	double[] toY = new double[64];
	int size;

	// stretches of the edge that is looked at, from 0 to 1
	private double[] open = new double[16];
	private int stretches;

	/** Of each polygon. */
	private final double[] minX;
	private final double[] minY;
	private final double[] maxX;
	private final double[] maxY;
	/** The polygons, the one with the largest box first: it covers most. */
	private final int[] bySize;

	Rim(Edges edges, double size) {
		this.edges = edges;
		near = size * NEAR;
		int polygons = edges.polygons();
		minX = new double[polygons];
		minY = new double[polygons];
		maxX = new double[polygons];
		maxY = new double[polygons];
		for (int k = 0; k < polygons; k++) {
			box(k);
		}
		bySize = IntStream.range(0, polygons).boxed()
				.sorted(Comparator.comparingDouble(k -> -(maxX[k] - minX[k]) * (maxY[k] - minY[k])))
				.mapToInt(Integer::intValue).toArray();
		for (int k = 0; k < edges.polygons(); k++) {
			for (int e = edges.from[k]; e < edges.from[k + 1]; e++) {
				clip(k, e);
			}
		}
	}

	private void box(int k) {
		minX[k] = Double.POSITIVE_INFINITY;
		minY[k] = Double.POSITIVE_INFINITY;
		maxX[k] = Double.NEGATIVE_INFINITY;
		maxY[k] = Double.NEGATIVE_INFINITY;
		for (int e = edges.from[k]; e < edges.from[k + 1]; e++) {
			minX[k] = Math.min(minX[k], Math.min(edges.x[e], edges.toX[e]));
			minY[k] = Math.min(minY[k], Math.min(edges.y[e], edges.toY[e]));
			maxX[k] = Math.max(maxX[k], Math.max(edges.x[e], edges.toX[e]));
			maxY[k] = Math.max(maxY[k], Math.max(edges.y[e], edges.toY[e]));
		}
	}

	private void clip(int own, int e) {
		open[0] = 0;
		open[1] = 1;
		stretches = 1;
		double dx = edges.toX[e] - edges.x[e];
		double dy = edges.toY[e] - edges.y[e];
		double x0 = Math.min(edges.x[e], edges.toX[e]);
		double y0 = Math.min(edges.y[e], edges.toY[e]);
		double x1 = Math.max(edges.x[e], edges.toX[e]);
		double y1 = Math.max(edges.y[e], edges.toY[e]);
		for (int k : bySize) {
			if (stretches == 0) {
				return;
			}
			if (k != own && x0 <= maxX[k] && x1 >= minX[k] && y0 <= maxY[k] && y1 >= minY[k]) {
				cover(own, e, k, dx, dy);
			}
		}
		for (int i = 0; i < stretches; i++) {
			add(edges.x[e] + open[2 * i] * dx, edges.y[e] + open[2 * i] * dy, edges.x[e] + open[2 * i + 1] * dx,
					edges.y[e] + open[2 * i + 1] * dy);
		}
	}

	/** Takes away what lies in polygon k. Of two edges on each other that look the same way the first one's stays. */
	private void cover(int own, int e, int k, double dx, double dy) {
		double low = 0;
		double high = 1;
		for (int f = edges.from[k]; f < edges.from[k + 1]; f++) {
			double at = edges.within(f, edges.x[e], edges.y[e]);
			double slope = -(edges.normalX[f] * dx + edges.normalY[f] * dy);
			double end = at + slope;
			boolean along = Math.abs(at) <= near && Math.abs(end) <= near;
			if (along) {
				boolean alike = edges.normalX[f] * edges.normalX[e] + edges.normalY[f] * edges.normalY[e] > 0;
				if (alike && own < k) {
					return;
				}
				continue;
			}
			if (at <= 0 && end <= 0) {
				return;
			}
			if (at < 0) {
				low = Math.max(low, -at / slope);
			} else if (end < 0) {
				high = Math.min(high, at / -slope);
			}
			if (low >= high) {
				return;
			}
		}
		double[] before = Arrays.copyOf(open, 2 * stretches);
		int count = stretches;
		stretches = 0;
		for (int i = 0; i < count; i++) {
			keep(before[2 * i], Math.min(before[2 * i + 1], low));
			keep(Math.max(before[2 * i], high), before[2 * i + 1]);
		}
	}

	private void keep(double low, double high) {
		if (high > low) {
			if (2 * stretches + 2 > open.length) {
				open = Arrays.copyOf(open, 2 * open.length);
			}
			open[2 * stretches] = low;
			open[2 * stretches + 1] = high;
			stretches++;
		}
	}

	private void add(double ax, double ay, double bx, double by) {
		if (size == x.length) {
			x = Arrays.copyOf(x, 2 * size);
			y = Arrays.copyOf(y, 2 * size);
			toX = Arrays.copyOf(toX, 2 * size);
			toY = Arrays.copyOf(toY, 2 * size);
		}
		x[size] = ax;
		y[size] = ay;
		toX[size] = bx;
		toY[size++] = by;
	}

	/** The square of the distance of a point from a stretch of the rim. */
	double distance2(int i, double px, double py) {
		double ux = toX[i] - x[i];
		double uy = toY[i] - y[i];
		double ex = px - x[i];
		double ey = py - y[i];
		double t = ex * ux + ey * uy;
		if (t > 0) {
			double l = ux * ux + uy * uy;
			t = t >= l ? 1 : t / l;
			ex -= t * ux;
			ey -= t * uy;
		}
		return ex * ex + ey * ey;
	}

	/** The way from a point to the nearest of a stretch. */
	void way(int i, double px, double py, double[] way) {
		double ux = toX[i] - x[i];
		double uy = toY[i] - y[i];
		double l = ux * ux + uy * uy;
		double t = l == 0 ? 0 : Math.max(0, Math.min(1, ((px - x[i]) * ux + (py - y[i]) * uy) / l));
		way[0] = x[i] + t * ux - px;
		way[1] = y[i] + t * uy - py;
	}
}
