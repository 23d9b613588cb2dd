package org.frisket.orders.paper.quote;

import java.io.IOException;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;

import org.frisket.page.PagePainter;
import org.frisket.page.Words;
import org.frisket.page.flow.Block;
import org.frisket.page.flow.Column;

/** Rows that end in amounts, which stand below each other with their ends in line. */
record MoneyRows(Column column, Currency currency) {

	private static final double ROW = 2.3;
	private static final double CELL = 30;
	private static final double RULE = 0.15;

	String text(BigDecimal amount) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMinimumFractionDigits(amount.scale());
		format.setMaximumFractionDigits(amount.scale());
		return format.format(amount) + ' ' + currency.getCurrencyCode();
	}

	static String percent(BigDecimal rate) {
		NumberFormat format = NumberFormat.getNumberInstance();
		format.setMaximumFractionDigits(Math.max(0, rate.scale()));
		return format.format(rate) + " %";
	}

	/** @param cells the last of which ends at the right edge, the others left of it */
	void row(String name, List<String> cells, double grey) throws IOException {
		double room = column.width() - cells.size() * CELL - 2;
		List<String> lines = Words.lines(name, Column.TEXT, room);
		List<String> texts = new ArrayList<>(List.of(name));
		texts.addAll(cells);
		double step = Column.TEXT * ROW;
		column.add(new Block(lines.size() * step, texts, (painter, top) -> {
			for (int i = 0; i < lines.size(); i++) {
				painter.words(lines.get(i), column.left(), top + i * step + Column.TEXT, Column.TEXT, room, grey);
			}
			double right = column.left() + column.width();
			for (int i = cells.size() - 1; i >= 0; i--) {
				ending(painter, cells.get(i), right, top + Column.TEXT, grey);
				right -= CELL;
			}
		}));
	}

	private static void ending(PagePainter painter, String text, double right, double baseline, double grey) throws IOException {
		double width = Words.width(text, Column.TEXT);
		painter.words(text, right - width, baseline, Column.TEXT, width + 0.1, grey);
	}

	/** A line across, above a sum. */
	void rule() {
		column.add(new Block(2, List.of(), (painter, top) -> painter
				.fill(Column.rectangle(column.left(), top + 0.2, column.width(), RULE), Column.BLACK)));
	}
}
