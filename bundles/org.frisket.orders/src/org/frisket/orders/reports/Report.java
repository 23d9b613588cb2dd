package org.frisket.orders.reports;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the studio's jobs come to, as a table whose rows can be drawn as bars. All texts are in the user's language.
 *
 * @param title   what it tells
 * @param day     of which it is
 * @param heading of the names of the rows
 * @param columns of numbers
 * @param rows    in their order
 * @param stacked whether the columns that are drawn are parts of one whole, and lie behind each other
 * @param least   where the scale of the picture ends at least, such as 100 for shares; 0 to leave it to the numbers
 */
public record Report(String title, LocalDate day, String heading, List<Column> columns, List<Row> rows, boolean stacked,
		double least) {

	/**
	 * @param title    what its numbers are
	 * @param unit     of them; those of one unit are drawn together
	 * @param decimals that people need of them
	 * @param drawn    whether they are drawn as bars; otherwise they only stand in the table
	 */
	public record Column(String title, String unit, int decimals, boolean drawn) {

		/** With its unit. */
		public String heading() {
			return unit.isEmpty() ? title : title + " (" + unit + ')';
		}
	}

	/** @param values one for each column; empty where there is none */
	public record Row(String name, List<OptionalDouble> values) {

		public Row {
			values = List.copyOf(values);
		}
	}

	/** @throws IllegalArgumentException if a row has not a value for each column, or no column is drawn */
	public Report {
		columns = List.copyOf(columns);
		rows = List.copyOf(rows);
		int count = columns.size();
		if (rows.stream().anyMatch(row -> row.values().size() != count) || columns.stream().noneMatch(Column::drawn)) {
			throw new IllegalArgumentException("a report whose rows do not have its " + count + " columns");
		}
	}

	/** As a table with headers; numbers with a decimal point, a cell without a value is empty. */
	public String toCsv() {
		List<List<String>> table = new ArrayList<>();
		List<String> headers = new ArrayList<>(List.of(heading));
		columns.forEach(column -> headers.add(column.heading()));
		table.add(headers);
		for (Row row : rows) {
			List<String> cells = new ArrayList<>(List.of(row.name()));
			for (int i = 0; i < columns.size(); i++) {
				OptionalDouble value = row.values().get(i);
				cells.add(value.isPresent()
						? String.format(Locale.ROOT, "%." + columns.get(i).decimals() + "f", value.getAsDouble())
						: "");
			}
			table.add(cells);
		}
		return Tables.csv(table);
	}
}
