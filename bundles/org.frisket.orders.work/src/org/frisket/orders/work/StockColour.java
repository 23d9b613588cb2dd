package org.frisket.orders.work;

import java.util.Comparator;

import org.frisket.model.Layer;
import org.frisket.model.Sheet;

/**
 * What lies on sheets together.
 *
 * @param stock  its id; empty if none was chosen
 * @param colour as #rrggbb; empty leaves it to the stock
 */
public record StockColour(String stock, String colour) implements Comparable<StockColour> {

	private static final Comparator<StockColour> ORDER = Comparator.comparing(StockColour::stock)
			.thenComparing(StockColour::colour);

	public static StockColour of(Layer layer) {
		return new StockColour(orEmpty(layer.getStock()), orEmpty(layer.getColour()));
	}

	public static StockColour of(Sheet sheet) {
		return new StockColour(orEmpty(sheet.getStock()), orEmpty(sheet.getColour()));
	}

	private static String orEmpty(String text) {
		return text == null ? "" : text.strip();
	}

	@Override
	public int compareTo(StockColour other) {
		return ORDER.compare(this, other);
	}

	/** Ids, for machines and the command line; empty without either. */
	@Override
	public String toString() {
		return (stock + ' ' + colour).strip();
	}
}
