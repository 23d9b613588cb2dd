package org.frisket.cli.stock;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

import org.frisket.material.Caliper;
import org.frisket.material.Stock;
import org.frisket.material.StockField;
import org.frisket.material.weights.Measures;

/** Stock for people. */
final class StockReport {

	private StockReport() {
	}

	/** One a line. */
	static void list(PrintWriter out, List<Stock> stocks) {
		int ids = stocks.stream().mapToInt(stock -> stock.id().length()).max().orElse(2);
		int names = stocks.stream().mapToInt(stock -> stock.name().length()).max().orElse(4);
		String row = "%-" + Math.max(ids, 2) + "s  %-" + Math.max(names, 4) + "s  %-6s  %8s  %8s  %8s%s%n";
		out.printf(row, "id", "name", "family", "g/m²", "mm", "on hand", "");
		for (Stock stock : stocks) {
			out.printf(row, stock.id(), stock.name(), StockField.wordOf(stock.family()),
					stock.grammage().map(value -> Measures.text(value, 1)).orElse("-"),
					stock.caliper().map(StockReport::mm).orElse("-"), stock.onHand().toPlainString(),
					stock.isLow() ? "  low" : "");
		}
		out.println("mm with ~: estimated from the weight");
	}

	private static String mm(Caliper caliper) {
		return (caliper.source() == Caliper.Source.ESTIMATED ? "~" : "") + Measures.text(caliper.thickness().mm(), 3);
	}

	/** All there is to say. */
	static void show(PrintWriter out, Stock stock) {
		line(out, "id", stock.id());
		line(out, "name", stock.name());
		line(out, "description", stock.description());
		line(out, "family", StockField.wordOf(stock.family()));
		line(out, "grammage", stock.grammage().map(value -> Measures.text(value, 2) + " g/m²").orElse(""));
		line(out, "basis weight", stock.basisWeight().map(Object::toString).orElse(""));
		line(out, "caliper", stock.caliper().map(caliper -> "%s mm = %s points, %s".formatted(
				Measures.text(caliper.thickness().mm(), 4), Measures.text(caliper.thickness().mils(), 2),
				StockField.wordOf(caliper.source()))).orElse(""));
		line(out, "bulk", stock.bulk().map(bulk -> Measures.text(bulk.value(), 3) + " cm³/g").orElse(""));
		line(out, "colour", stock.colour());
		line(out, "finish", StockField.wordOf(stock.finish()));
		line(out, "grain", StockField.wordOf(stock.grain()));
		line(out, "sizes", stock.sizes().stream().map(Object::toString).collect(Collectors.joining(", ")));
		line(out, "price", stock.price().map(Object::toString).orElse(""));
		line(out, "on hand", stock.onHand().toPlainString() + (stock.isLow() ? ", low" : ""));
		line(out, "low water", stock.lowWater().toPlainString());
		line(out, "abrasion", stock.abrasion().toPlainString());
		line(out, "notes", stock.notes().replace("\n", "\n              "));
	}

	private static void line(PrintWriter out, String name, String value) {
		if (!value.isEmpty()) {
			out.printf("%-12s  %s%n", name, value);
		}
	}
}
