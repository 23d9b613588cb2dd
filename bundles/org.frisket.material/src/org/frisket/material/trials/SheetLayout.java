package org.frisket.material.trials;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Outline;

/**
 * Where what lies on a test sheet, in mm from its upper left corner, y down. Cells lie as close as their labels allow, so
 * that a sheet takes little card.
 */
public final class SheetLayout {

	/** Shapes a blade can follow, and that can be told apart by eye; our own choice. */
	public static final double LEAST_SIZE = 5;
	public static final double MOST_SIZE = 40;
	public static final double USUAL_SIZE = TestPattern.USUAL;
	/** Drawn capitals below 2 mm are hard to read; common practice, no source. */
	static final double LABEL = 2.2;
	static final double LINE = 3.2;
	private static final double GAP = 2.5;
	private static final int TITLE_LINES = 2;

	private final TestSheet sheet;
	private final TestPattern pattern;
	private final double side;
	private final double top;

	/**
	 * @param size side of the square of each trial, in mm
	 * @throws IllegalArgumentException if nobody can cut or judge shapes of this size
	 */
	public SheetLayout(TestSheet sheet, double size) {
		if (!(size >= LEAST_SIZE && size <= MOST_SIZE)) {
			throw new IllegalArgumentException(NLS.bind(Messages.SheetLayout_size, Sweep.plain(LEAST_SIZE),
					Sweep.plain(MOST_SIZE)));
		}
		this.sheet = sheet;
		pattern = new TestPattern(size);
		double widest = 0;
		for (int row = 0; row < sheet.down().values().size(); row++) {
			widest = Math.max(widest, StrokeFigures.width(rowLabel(row), LABEL));
		}
		side = widest + GAP;
		top = (TITLE_LINES + 1) * LINE + GAP / 2;
	}

	/** Of all that lies on the sheet, titles too. */
	public double width() {
		int columns = sheet.across().values().size();
		double title = Math.max(StrokeFigures.width(axes(), LABEL), StrokeFigures.width(facts(), LABEL));
		return Math.max(title, side + columns * pattern.width() + (columns - 1) * GAP);
	}

	public double height() {
		int rows = sheet.down().values().size();
		return top + rows * (LINE + pattern.height()) + (rows - 1) * GAP;
	}

	private double x(int column) {
		return side + column * (pattern.width() + GAP);
	}

	private double y(int row) {
		return top + row * (LINE + pattern.height() + GAP);
	}

	/** Around the shapes of a cell. */
	public Bounds shapes(CellPlace place) {
		double left = x(place.column());
		double upper = y(place.row()) + LINE;
		return new Bounds(left, upper, left + pattern.width(), upper + pattern.height());
	}

	/** Around a cell with its label and half of the gap to the next ones. */
	public Bounds cell(CellPlace place) {
		Bounds shapes = shapes(place);
		return new Bounds(shapes.minX() - GAP / 2, shapes.minY() - LINE - GAP / 2, shapes.maxX() + GAP / 2,
				shapes.maxY() + GAP / 2);
	}

	/** What is cut in a cell. */
	public Outline cut(CellPlace place) {
		return pattern.at(x(place.column()), y(place.row()) + LINE);
	}

	/** How many metres of line all cells take, their passes counted. */
	public double metres() {
		return sheet.places().stream().mapToDouble(place -> sheet.settings(place).passes()
				* cut(place).contours().stream().mapToDouble(contour -> contour.length()).sum()).sum() / 1000;
	}

	/** The labels that the pen draws, as path data: what the sheet is of, its columns, its rows and its cells. */
	public String labels() {
		StringBuilder path = new StringBuilder();
		StrokeFigures.write(axes(), 0, 0, LABEL, path);
		StrokeFigures.write(facts(), 0, LINE, LABEL, path);
		for (int column = 0; column < sheet.across().values().size(); column++) {
			StrokeFigures.write(columnLabel(column), x(column), TITLE_LINES * LINE + GAP / 4, LABEL, path);
		}
		for (int row = 0; row < sheet.down().values().size(); row++) {
			StrokeFigures.write(rowLabel(row), 0, y(row) + LINE + (pattern.height() - LABEL) / 2, LABEL, path);
		}
		for (CellPlace place : sheet.places()) {
			StrokeFigures.write(place.toString(), x(place.column()), y(place.row()), LABEL, path);
		}
		return path.toString();
	}

	String axes() {
		return sheet.across().parameter().word() + " across - " + sheet.down().parameter().word() + " down";
	}

	private String facts() {
		StockFacts stock = sheet.stock();
		String weight = stock.grammage() > 0 ? ' ' + Sweep.plain(stock.grammage()) + " gsm" : "";
		return sheet.day() + " " + sheet.id() + ' ' + (stock.stock().isEmpty() ? stock.family().name() : stock.stock())
				+ weight;
	}

	private String columnLabel(int column) {
		return (char) ('A' + column) + "  " + Sweep.plain(sheet.across().values().get(column));
	}

	private String rowLabel(int row) {
		return row + 1 + "  " + Sweep.plain(sheet.down().values().get(row));
	}
}
