package org.frisket.page.flow;

import java.io.IOException;

import org.eclipse.osgi.util.NLS;
import org.frisket.page.PagePainter;

/**
 * A bar under a picture by which lengths can be read off it.
 *
 * @param scale   mm of paper to one of what is shown
 * @param figures in whose unit it is
 */
public record ScaleBar(double scale, Figures figures) {

	/** With its words, in mm. */
	public static final double HEIGHT = 2.5;
	/** How long a bar is, in mm or in inches. */
	private static final double[] BARS = { 0.1, 0.25, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000 };
	private static final double LONGEST = 60;
	private static final double DIGITS = 1.7;

	/** Such as {@code 1 : 2.5}. */
	public String scaleText() {
		return scale <= 1 ? "1 : " + Figures.number(1 / scale, 2) : Figures.number(scale, 2) + " : 1";
	}

	private double unit() {
		return figures.inches() ? Figures.MM_PER_INCH : 1;
	}

	/** In the unit of lengths. */
	private double length() {
		double length = BARS[0];
		for (double bar : BARS) {
			if (bar * unit() * scale <= LONGEST) {
				length = bar;
			}
		}
		return length;
	}

	/** How long it is drawn, in mm of paper. */
	public double width() {
		return length() * unit() * scale;
	}

	/** How long it is, and the scale. */
	public String text() {
		return NLS.bind(Messages.ScaleBar_bar, figures.length(length() * unit()), scaleText());
	}

	/** @param left end of it @param y its upper edge */
	public void paint(PagePainter painter, double left, double y) throws IOException {
		double length = width();
		painter.fill(Column.rectangle(left, y + 1, length, 0.3), Column.BLACK);
		painter.fill(Column.rectangle(left, y, 0.25, 2), Column.BLACK);
		painter.fill(Column.rectangle(left + length - 0.25, y, 0.25, 2), Column.BLACK);
		painter.words(text(), left + length + 2, y + 2, DIGITS, 100, Column.DARK);
	}
}
