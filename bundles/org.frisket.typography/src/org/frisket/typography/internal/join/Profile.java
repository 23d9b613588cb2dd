package org.frisket.typography.internal.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.geometry.Bounds;

/** The filled part of some polygons by the non-zero rule, asked row by row. */
final class Profile {

	private static final int EDGES_PER_BAND = 6;
	private static final int MOST_BANDS = 64;

	private final double[] upperX;
	private final double[] upperY;
	private final double[] lowerX;
	private final double[] lowerY;
	private final int[] winding;
	private final Bounds bounds;
	private final int[][] bands;

	Profile(List<Polygon> polygons) {
		int edges = polygons.stream().mapToInt(p -> p.x.length).sum();
		upperX = new double[edges];
		upperY = new double[edges];
		lowerX = new double[edges];
		lowerY = new double[edges];
		winding = new int[edges];
		int edge = 0;
		Bounds box = Bounds.EMPTY;
		for (Polygon p : polygons) {
			box = box.with(p.bounds);
			for (int i = 0, j = p.x.length - 1; i < p.x.length; j = i++) {
				boolean down = p.y[j] <= p.y[i];
				upperX[edge] = down ? p.x[j] : p.x[i];
				upperY[edge] = down ? p.y[j] : p.y[i];
				lowerX[edge] = down ? p.x[i] : p.x[j];
				lowerY[edge] = down ? p.y[i] : p.y[j];
				winding[edge++] = down ? 1 : -1;
			}
		}
		bounds = box;
		bands = bands();
	}

	/** For every band of rows the edges that reach into it. */
	private int[][] bands() {
		int[][] found = new int[Math.max(1, Math.min(MOST_BANDS, upperX.length / EDGES_PER_BAND))][];
		int[] counts = new int[found.length];
		for (int i = 0; i < upperX.length; i++) {
			for (int band = band(upperY[i], found.length); band <= band(lowerY[i], found.length); band++) {
				counts[band]++;
			}
		}
		for (int band = 0; band < found.length; band++) {
			found[band] = new int[counts[band]];
		}
		for (int i = upperX.length - 1; i >= 0; i--) {
			for (int band = band(upperY[i], found.length); band <= band(lowerY[i], found.length); band++) {
				found[band][--counts[band]] = i;
			}
		}
		return found;
	}

	private int band(double y, int count) {
		int band = (int) ((y - bounds.minY()) / bounds.height() * count);
		return Math.max(0, Math.min(count - 1, band));
	}

	private int[] near(double y) {
		return bands[band(y, bands.length)];
	}

	Bounds bounds() {
		return bounds;
	}

	int size() {
		return upperX.length;
	}

	/** Where edge {@code i} starts; taken over all edges, every corner comes once. */
	double cornerX(int i) {
		return winding[i] > 0 ? upperX[i] : lowerX[i];
	}

	double cornerY(int i) {
		return winding[i] > 0 ? upperY[i] : lowerY[i];
	}

	/** The rightmost place of row {@code y}; negative infinity if the row is empty. */
	double right(double y) {
		double right = Double.NEGATIVE_INFINITY;
		for (int i : near(y)) {
			if (upperY[i] <= y && y <= lowerY[i]) {
				right = Math.max(right, upperY[i] == lowerY[i] ? Math.max(upperX[i], lowerX[i]) : x(i, y));
			}
		}
		return right;
	}

	/** The leftmost place of row {@code y}; positive infinity if the row is empty. */
	double left(double y) {
		double left = Double.POSITIVE_INFINITY;
		for (int i : near(y)) {
			if (upperY[i] <= y && y <= lowerY[i]) {
				left = Math.min(left, upperY[i] == lowerY[i] ? Math.min(upperX[i], lowerX[i]) : x(i, y));
			}
		}
		return left;
	}

	/** Where edge {@code i} is at row {@code y}. */
	double x(int i, double y) {
		return upperX[i] + (lowerX[i] - upperX[i]) * ((y - upperY[i]) / (lowerY[i] - upperY[i]));
	}

	/** One filled stretch of a band of rows, between two edges. */
	record Stretch(int left, int right) {
	}

	/** The filled stretches of the band between two rows that have no corner between them, from left to right. */
	List<Stretch> stretches(double top, double bottom) {
		double middle = (top + bottom) / 2;
		int count = 0;
		int[] edges = new int[8];
		for (int i : near(middle)) {
			if (upperY[i] < middle && middle < lowerY[i]) {
				if (count == edges.length) {
					edges = Arrays.copyOf(edges, 2 * count);
				}
				int at = count++;
				double x = x(i, middle);
				while (at > 0 && x(edges[at - 1], middle) > x) {
					edges[at] = edges[at - 1];
					at--;
				}
				edges[at] = i;
			}
		}
		List<Stretch> stretches = new ArrayList<>(count / 2);
		int turns = 0;
		int left = -1;
		for (int i = 0; i < count; i++) {
			if (turns == 0) {
				left = edges[i];
			}
			turns += winding[edges[i]];
			if (turns == 0) {
				stretches.add(new Stretch(left, edges[i]));
			}
		}
		return stretches;
	}

	/** The nearest row of a corner above {@code y} and below {@code top}, or else {@code top}. */
	double rowAbove(double y, double top) {
		double nearest = top;
		for (int i = 0; i < size(); i++) {
			if (cornerY(i) < y) {
				nearest = Math.max(nearest, cornerY(i));
			}
		}
		return nearest;
	}

	/** The nearest row of a corner below {@code y} and above {@code bottom}, or else {@code bottom}. */
	double rowBelow(double y, double bottom) {
		double nearest = bottom;
		for (int i = 0; i < size(); i++) {
			if (cornerY(i) > y) {
				nearest = Math.min(nearest, cornerY(i));
			}
		}
		return nearest;
	}

	/** Rows of all corners from {@code top} to {@code bottom}, these two among them, sorted. */
	static double[] rows(Profile a, Profile b, double top, double bottom) {
		double[] rows = new double[a.size() + b.size() + 2];
		int count = 0;
		rows[count++] = top;
		rows[count++] = bottom;
		for (Profile each : new Profile[] { a, b }) {
			for (int i = 0; i < each.size(); i++) {
				double y = each.cornerY(i);
				if (y > top && y < bottom) {
					rows[count++] = y;
				}
			}
		}
		rows = Arrays.copyOf(rows, count);
		Arrays.sort(rows);
		return rows;
	}
}
