package org.frisket.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * The largest rectangle that lies between shapes. Cells say where it may be; from there each side is pushed to the
 * edges of the shapes themselves, and then pulled back a little, in ever smaller steps, as long as the others gain by it.
 */
final class FreeSpace {

	private static final int CANDIDATES = 24;
	private static final double SMALLEST_STEP_MM = 0.002;
	private static final double ROUNDING = 1e-9;
	/** In cells: how far round a candidate its sides may be pushed. */
	private static final int REACH = 20;
	/** Sides are numbered left, top, right, bottom. */
	private static final int[][] ORDERS = { { 0, 1, 2, 3 }, { 1, 0, 3, 2 }, { 2, 3, 0, 1 }, { 3, 2, 1, 0 } };

	private final double width;
	private final double height;
	private final FreeCells cells;
	/** Each x, y, x, y. */
	private final List<double[]> edges = new ArrayList<>();

	FreeSpace(double width, double height) {
		this.width = width;
		this.height = height;
		cells = new FreeCells(width, height);
	}

	/** Nothing may lie in these polygons. */
	void block(Geometry polygons) {
		for (int i = 0; i < polygons.getNumGeometries(); i++) {
			if (polygons.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
				cells.take(polygon);
				addEdges(polygon.getExteriorRing());
				for (int k = 0; k < polygon.getNumInteriorRing(); k++) {
					addEdges(polygon.getInteriorRingN(k));
				}
			}
		}
	}

	private void addEdges(LinearRing ring) {
		CoordinateSequence points = ring.getCoordinateSequence();
		for (int i = 0; i + 1 < points.size(); i++) {
			edges.add(new double[] { points.getX(i), points.getY(i), points.getX(i + 1), points.getY(i + 1) });
		}
	}

	Optional<Bounds> largest(Monitor monitor) {
		double[] best = null;
		double cell = cells.cell();
		for (double[] candidate : cells.largest(CANDIDATES)) {
			monitor.check();
			double most = (candidate[2] - candidate[0] + 2 * cell) * (candidate[3] - candidate[1] + 2 * cell);
			if (best == null || most > area(best)) {
				double[] refined = new Rectangle(candidate).refined();
				best = best == null || area(refined) > area(best) ? refined : best;
			}
		}
		return best == null ? Optional.empty() : Optional.of(new Bounds(best[0], best[1], best[2], best[3]));
	}

	private static double area(double[] rectangle) {
		return (rectangle[2] - rectangle[0]) * (rectangle[3] - rectangle[1]);
	}

	/** A free one on its way to a larger one; only edges near it count, and it stays among them. */
	private final class Rectangle {

		private final double[] begin;
		private final double[] walls;
		private final List<double[]> near;

		Rectangle(double[] begin) {
			this.begin = begin;
			double reach = REACH * cells.cell();
			walls = new double[] { Math.max(0, begin[0] - reach), Math.max(0, begin[1] - reach),
					Math.min(width, begin[2] + reach), Math.min(height, begin[3] + reach) };
			near = edges.stream().filter(e -> Math.max(e[0], e[2]) >= walls[0] && Math.min(e[0], e[2]) <= walls[2]
					&& Math.max(e[1], e[3]) >= walls[1] && Math.min(e[1], e[3]) <= walls[3]).toList();
		}

		double[] refined() {
			double[] best = begin;
			for (int[] order : ORDERS) {
				double[] pushed = pushed(begin.clone(), order);
				best = area(pushed) > area(best) ? pushed : best;
			}
			for (double step = REACH / 2 * cells.cell(); step > SMALLEST_STEP_MM; step /= 2) {
				boolean gained = true;
				while (gained) {
					gained = false;
					for (int side = 0; side < ORDERS.length; side++) {
						double[] other = pulled(best, side, step);
						if (area(other) > area(best) + ROUNDING) {
							best = other;
							gained = true;
						}
					}
				}
			}
			return best;
		}

		private double[] pulled(double[] from, int side, double step) {
			double[] other = from.clone();
			other[side] += side < 2 ? step : -step;
			if (other[0] >= other[2] || other[1] >= other[3]) {
				return from;
			}
			int across = (side + 1) % ORDERS.length;
			int opposite = (side + 2) % ORDERS.length;
			return pushed(other, new int[] { across, (across + 2) % ORDERS.length, opposite, side });
		}

		private double[] pushed(double[] rectangle, int[] order) {
			for (int side : order) {
				rectangle[side] = reach(rectangle, side);
			}
			return rectangle;
		}

		/** How far out a side can be pushed. */
		private double reach(double[] rectangle, int side) {
			int axis = side % 2;
			int across = 1 - axis;
			double from = rectangle[across];
			double to = rectangle[across + 2];
			boolean low = side < 2;
			double reach = walls[side];
			for (double[] e : near) {
				double p1 = e[across];
				double p2 = e[across + 2];
				if (Math.max(p1, p2) <= from + ROUNDING || Math.min(p1, p2) >= to - ROUNDING) {
					continue;
				}
				double a = p1 == p2 ? e[axis] : clipped(e, axis, across, from);
				double b = p1 == p2 ? e[axis + 2] : clipped(e, axis, across, to);
				if (low && Math.max(a, b) <= rectangle[side] + ROUNDING) {
					reach = Math.max(reach, Math.max(a, b));
				} else if (!low && Math.min(a, b) >= rectangle[side] - ROUNDING) {
					reach = Math.min(reach, Math.min(a, b));
				}
			}
			return low ? Math.min(reach, rectangle[side]) : Math.max(reach, rectangle[side]);
		}

		/** Where an edge is along one axis at a place of the other, or at its end that is nearer to that. */
		private static double clipped(double[] e, int axis, int across, double at) {
			double t = (at - e[across]) / (e[across + 2] - e[across]);
			return e[axis] + (e[axis + 2] - e[axis]) * Math.max(0, Math.min(1, t));
		}
	}
}
