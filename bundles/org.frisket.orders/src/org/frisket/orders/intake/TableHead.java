package org.frisket.orders.intake;

import java.util.ArrayList;
import java.util.List;

import org.frisket.studio.csv.CsvTable;

/**
 * How a table begins, as it stands in the file.
 *
 * @param titles of its columns
 * @param first  rows below them
 * @param rows   how many there are below them, empty ones aside
 */
public record TableHead(List<String> titles, List<CsvTable.Row> first, int rows) {

	/** Of what is no table. */
	static final TableHead NONE = new TableHead(List.of(), List.of(), 0);

	private static final int FIRST = 20;

	public TableHead {
		titles = List.copyOf(titles);
		first = List.copyOf(first);
	}

	/** @param filled its rows that are not empty, the titles before the others; at least one */
	static TableHead of(List<CsvTable.Row> filled) {
		return new TableHead(filled.get(0).cells().stream().map(String::strip).toList(),
				filled.subList(1, Math.min(filled.size(), FIRST + 1)), filled.size() - 1);
	}

	/** Titles that columns can be called by: those that are there, each once. */
	public List<String> columns() {
		List<String> columns = new ArrayList<>();
		for (String title : titles) {
			if (!title.isEmpty() && columns.stream().noneMatch(other -> OrderMapping.isSame(other, title))) {
				columns.add(title);
			}
		}
		return columns;
	}

	/** Which of {@link #columns} is called so; less than nothing if none is. */
	public int column(String header) {
		List<String> columns = columns();
		for (int i = 0; i < columns.size(); i++) {
			if (!header.isEmpty() && OrderMapping.isSame(columns.get(i), header)) {
				return i;
			}
		}
		return -1;
	}
}
