package org.frisket.impose.search;

import java.util.ArrayList;
import java.util.List;

import org.frisket.impose.shape.Solid;

/** Boxes in rows across the sheet: a layout at once, however many parts there are. */
final class Rows {

	private final double length;
	private final double width;
	private double x;
	private double y;
	private double rowEnd;

	Rows(double length, double width) {
		this.length = length;
		this.width = width;
	}

	/**
	 * One sheet of them.
	 *
	 * @param demands what found a place is added here
	 * @param rest    what is wanted, in this order, until one finds no place
	 */
	static Arrangement fill(Shapes shapes, double length, double width, List<Demand> demands, List<Demand> rest) {
		Rows rows = new Rows(length, width);
		double[] place = new double[2];
		List<double[]> places = new ArrayList<>();
		List<Integer> turns = new ArrayList<>();
		for (Demand demand : rest) {
			int turn = flattest(shapes, demand.shape());
			if (!rows.put(shapes.solid(demand.shape(), turn), place)) {
				break;
			}
			demands.add(demand);
			places.add(place.clone());
			turns.add(turn);
		}
		Arrangement at = new Arrangement(shapes, demands.stream().mapToInt(Demand::shape).toArray(), 0, length, width);
		for (int p = 0; p < at.parts(); p++) {
			at.x[p] = places.get(p)[0];
			at.y[p] = places.get(p)[1];
			at.turn[p] = turns.get(p);
		}
		return at;
	}

	/** The turn in which a shape is shortest along the sheet, so that rows are. */
	private static int flattest(Shapes shapes, int shape) {
		int best = shapes.allowed[shape][0];
		for (int turn : shapes.allowed[shape]) {
			if (wide(shapes, shape, turn) < wide(shapes, shape, best)) {
				best = turn;
			}
		}
		return best;
	}

	private static double wide(Shapes shapes, int shape, int turn) {
		return shapes.solid(shape, turn).maxX() - shapes.solid(shape, turn).minX();
	}

	/** Puts the next box down; false if the sheet is full for it. @param at its x and y are put here */
	boolean put(Solid solid, double[] at) {
		double w = solid.maxX() - solid.minX();
		double h = solid.maxY() - solid.minY();
		if (h > width || w > length) {
			return false;
		}
		double toX = x;
		double toY = y;
		double end = rowEnd;
		if (toY + h > width) {
			toX = end;
			toY = 0;
		}
		if (toX + w > length) {
			return false;
		}
		x = toX;
		y = toY + h;
		rowEnd = Math.max(end, toX + w);
		at[0] = toX - solid.minX();
		at[1] = toY - solid.minY();
		return true;
	}
}
