package org.frisket.impose.search;

import org.frisket.impose.shape.Solid;

/** One part after the other, each as far back on the sheet as it goes. */
final class FirstLayout {

	/** How many columns to the sheet's width are tried for a place. */
	private static final int COLUMNS = 150;
	/** Of the width: the least step up a column. */
	private static final double LEAST_STEP = 1e-3;
	private static final int HALVINGS = 20;

	private final Arrangement at;

	FirstLayout(Arrangement at) {
		this.at = at;
	}

	/** Lays a part clear of all that come before it; false if it finds no place within the length. */
	boolean lay(int part) {
		double far = at.length * (1 + 1e-12);
		boolean found = false;
		for (int turn : at.shapes.allowed[at.shape[part]]) {
			Solid solid = at.shapes.solid(at.shape[part], turn);
			double high = at.width - solid.maxY();
			if (high < -solid.minY()) {
				continue;
			}
			double step = at.width / COLUMNS;
			for (double x = -solid.minX(); x + solid.maxX() <= far; x += step) {
				double y = column(part, turn, x, -solid.minY(), high);
				if (Double.isNaN(y)) {
					continue;
				}
				double low = Math.max(-solid.minX(), x - step);
				double free = x;
				for (int i = 0; i < HALVINGS && low < free; i++) {
					double mid = (low + free) / 2;
					double there = column(part, turn, mid, -solid.minY(), high);
					if (Double.isNaN(there)) {
						low = mid;
					} else {
						free = mid;
						y = there;
					}
				}
				if (!found || free + solid.maxX() < far) {
					found = true;
					far = free + solid.maxX();
					at.x[part] = free;
					at.y[part] = y;
					at.turn[part] = turn;
				}
				break;
			}
		}
		return found;
	}

	/** The first free place up a column, or NaN: where parts overlap by some depth, so they do as far around. */
	private double column(int part, int turn, double x, double low, double high) {
		double least = at.width * LEAST_STEP;
		double y = low;
		while (y < high) {
			double deep = depth(part, turn, x, y);
			if (deep == 0) {
				return y;
			}
			y += Math.max(deep, least);
		}
		return depth(part, turn, x, high) == 0 ? high : Double.NaN;
	}

	private double depth(int part, int turn, double x, double y) {
		double deepest = 0;
		for (int q = 0; q < part; q++) {
			deepest = Math.max(deepest,
					at.shapes.depth(at.shape[part], turn, at.shape[q], at.turn[q], at.x[q] - x, at.y[q] - y));
		}
		return deepest;
	}
}
