package org.frisket.ui.material.internal.shelf;

import java.math.BigDecimal;
import java.util.OptionalInt;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.frisket.material.Stock;
import org.frisket.material.shelf.PaperColour;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.views.internal.Shortened;

/**
 * Paints the rows of the shelf. Each stock lies there as a sheet with its colour, seen a little from above, so that its
 * edge is as thick as its caliper; at the right a gauge with the low-water mark tells how much of it there is.
 */
final class ShelfPainter {

	static final int SPACE_PX = 4;
	static final int SWATCH_PX = 44;

	private static final int FACE_PX = 20;
	private static final int CORNER_PX = 7;
	private static final int GAUGE_PX = 34;
	private static final int GAUGE_HEIGHT_PX = 6;
	private static final int LEAST_EDGE_PX = 1;
	private static final int MOST_EDGE_PX = 14;
	/** So that the calipers of card can be told from each other. */
	private static final double EDGE_PX_PER_MM = 12;
	private static final int OPAQUE = 255;
	private static final int FADED = 185;
	private static final int FAINT = 110;
	/** Where the gauge is full: so many times the low-water mark. */
	private static final int FULL = 4;

	private final GC gc;
	private final int lineHeight;

	ShelfPainter(GC gc) {
		this.gc = gc;
		lineHeight = gc.getFontMetrics().getHeight();
	}

	static int rowHeight(int lineHeight) {
		return Math.max(2 * lineHeight, FACE_PX + MOST_EDGE_PX) + 2 * SPACE_PX;
	}

	/** Where the sheet's face is seen. */
	static Rectangle faceOf(Rectangle row) {
		return new Rectangle(row.x + 2 * SPACE_PX, row.y + SPACE_PX, SWATCH_PX - 2 * SPACE_PX, FACE_PX);
	}

	/** How thick the edge is drawn, in pixels. */
	static int edge(Stock stock) {
		return stock.caliper().map(caliper -> (int) Math.round(caliper.thickness().mm().doubleValue() * EDGE_PX_PER_MM))
				.map(px -> Math.max(LEAST_EDGE_PX, Math.min(MOST_EDGE_PX, px))).orElse(LEAST_EDGE_PX);
	}

	static RGB colour(Stock stock) {
		OptionalInt rgb = PaperColour.of(stock.colour());
		if (rgb.isEmpty()) {
			return ThemeColour.BENCH_STOCK.colour().getRGB();
		}
		int value = rgb.getAsInt();
		return new RGB(value >> 16, value >> 8 & 0xff, value & 0xff);
	}

	/**
	 * @param remark in place of the number on hand; null for that
	 * @param strong whether the row is selected and the keys act on it
	 */
	void paint(Rectangle row, Stock stock, String remark, boolean selected, boolean strong) {
		Display display = Display.getCurrent();
		if (selected) {
			gc.setBackground(display.getSystemColor(strong ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_WIDGET_BACKGROUND));
			gc.fillRectangle(row);
		}
		Color ink = display.getSystemColor(selected && strong ? SWT.COLOR_LIST_SELECTION_TEXT : SWT.COLOR_LIST_FOREGROUND);
		sheet(faceOf(row), stock, ink);
		gc.setForeground(ink);
		int left = row.x + 2 * SPACE_PX + SWATCH_PX;
		int right = row.x + row.width - 2 * SPACE_PX;
		int first = row.y + SPACE_PX;
		int second = first + lineHeight;
		String quantity = remark == null ? StockText.onHand(stock) : remark;
		int nameEnd = right - gc.textExtent(quantity).x;
		gc.drawText(quantity, nameEnd, first, true);
		gc.drawText(Shortened.of(gc, stock.name(), nameEnd - left - 2 * SPACE_PX), left, first, true);
		int secondEnd = remark == null ? level(stock, right, second, ink) : right;
		gc.setAlpha(selected ? OPAQUE : FADED);
		gc.drawText(Shortened.of(gc, fitting(stock, secondEnd - left - 2 * SPACE_PX), secondEnd - left - 2 * SPACE_PX), left, second, true);
		gc.setAlpha(OPAQUE);
	}

	/** As much of the second line as there is room for: the colour is seen anyway, and then the words become signs. */
	private String fitting(Stock stock, int width) {
		String text = StockText.second(stock);
		if (gc.textExtent(text).x > width) {
			text = StockText.measures(stock, false);
		}
		if (gc.textExtent(text).x > width) {
			text = StockText.measures(stock, true);
		}
		for (int count = 2; count > 0 && gc.textExtent(text).x > width; count--) {
			text = StockText.least(stock, count);
		}
		return text;
	}

	private void sheet(Rectangle face, Stock stock, Color ink) {
		RGB rgb = colour(stock);
		int edge = edge(stock);
		gc.setBackground(new Color(darker(rgb)));
		gc.fillRectangle(face.x, face.y + face.height, face.width, edge);
		gc.setBackground(new Color(rgb));
		gc.fillRectangle(face);
		gc.setForeground(ink);
		gc.setAlpha(FAINT);
		gc.drawRectangle(face.x, face.y, face.width - 1, face.height + edge - 1);
		gc.drawLine(face.x, face.y + face.height, face.x + face.width - 1, face.y + face.height);
		int x = face.x + face.width - 1;
		gc.drawLine(x - CORNER_PX, face.y, x - CORNER_PX, face.y + CORNER_PX);
		gc.drawLine(x - CORNER_PX, face.y + CORNER_PX, x, face.y + CORNER_PX);
		gc.setAlpha(OPAQUE);
	}

	private static RGB darker(RGB rgb) {
		return new RGB(rgb.red * 3 / 4, rgb.green * 3 / 4, rgb.blue * 3 / 4);
	}

	/**
	 * The gauge; what is low is told by a word and by an open, hatched end as well as by where it stands.
	 *
	 * @return where the free room ends
	 */
	private int level(Stock stock, int right, int top, Color ink) {
		if (stock.lowWater().signum() <= 0) {
			return right;
		}
		int x = right - GAUGE_PX;
		int y = top + (lineHeight - GAUGE_HEIGHT_PX) / 2;
		BigDecimal full = stock.lowWater().multiply(BigDecimal.valueOf(FULL));
		double part = Math.min(1, stock.onHand().doubleValue() / full.doubleValue());
		int filled = (int) Math.round(part * (GAUGE_PX - 2));
		int mark = x + 1 + (GAUGE_PX - 2) / FULL;
		gc.setForeground(ink);
		gc.drawRectangle(x, y, GAUGE_PX - 1, GAUGE_HEIGHT_PX);
		if (stock.isLow()) {
			for (int i = 0; i < filled; i += 3) {
				gc.drawLine(x + 1 + i, y + GAUGE_HEIGHT_PX, x + 1 + i, y + 1);
			}
		} else {
			gc.setBackground(ink);
			gc.fillRectangle(x + 1, y + 1, filled, GAUGE_HEIGHT_PX - 1);
		}
		gc.drawLine(mark, y - 3, mark, y + GAUGE_HEIGHT_PX + 3);
		if (!stock.isLow()) {
			return x;
		}
		int word = gc.textExtent(Messages.StockText_low).x;
		gc.drawText(Messages.StockText_low, x - SPACE_PX - word, top, true);
		return x - SPACE_PX - word;
	}
}
