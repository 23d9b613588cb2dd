package org.frisket.impose.search;

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
