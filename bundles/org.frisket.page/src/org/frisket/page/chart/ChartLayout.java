package org.frisket.page.chart;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;
import org.frisket.prepare.layout.Paper;

/** Where the cells of a chart are on their pages and where a glyph stands in its cell, in mm. */
public final class ChartLayout {

	/** Between the edge of the paper and what is printed; every office printer can do that. */
	public static final double MARGIN = 10;
	/** Of the lines above the cells. */
	static final double HEAD = 16;
	public static final double CELL_WIDTH = 19;
	public static final double CELL_HEIGHT = 21.7;
	/** Height of capitals; the cell leaves room for ascenders, accents and descenders. */
	public static final double CAPITAL = 6.5;
	private static final double BASELINE = 12.5;
	/** Below the glyph, for its label. */
	private static final double FOOT = 4.5;
	private static final double SPACE = 1.2;
	private static final CellFit FIT = new CellFit(CAPITAL, BASELINE);

	private final Paper paper;
	private final int columns;
	private final int rows;

	public ChartLayout(Paper paper) {
		this.paper = paper;
		columns = (int) Math.floor((paper.width() - 2 * MARGIN) / CELL_WIDTH);
		rows = (int) Math.floor((paper.height() - 2 * MARGIN - HEAD) / CELL_HEIGHT);
	}

	public Paper paper() {
		return paper;
	}

	/** How many glyphs a page holds. */
	public int perPage() {
		return columns * rows;
	}

	/** At least one. */
	public int pages(int glyphs) {
		return Math.max(1, (glyphs + perPage() - 1) / perPage());
	}

	/** @param index of a glyph on its page, from 0, row by row */
	public Bounds cell(int index) {
		double left = left() + index % columns * CELL_WIDTH;
		double top = MARGIN + HEAD + index / columns * CELL_HEIGHT;
		return new Bounds(left, top, left + CELL_WIDTH, top + CELL_HEIGHT);
	}

	/** The cells stand in the middle of the paper. */
	double left() {
		return (paper.width() - columns * CELL_WIDTH) / 2;
	}

	double width() {
		return columns * CELL_WIDTH;
	}

	/** By how much a glyph is made smaller so that its cell holds it: 1 for most, never more. */
	static double reduction(Outline glyph, Bounds cell) {
		return FIT.reduction(glyph.bounds(), room(cell));
	}

	/** What a glyph may fill of a cell. */
	private static Bounds room(Bounds cell) {
		return new Bounds(cell.minX() + SPACE, cell.minY() + SPACE, cell.maxX() - SPACE, cell.maxY() - FOOT - SPACE);
	}

	/** A glyph with capitals 1 high, at its place in a cell. */
	public static Outline placed(Outline glyph, Bounds cell) {
		return glyph.isEmpty() ? glyph : glyph.transformed(FIT.place(glyph.bounds(), room(cell), cell.minY()));
	}
}
