package org.frisket.material.csv;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockField;
import org.frisket.studio.csv.CsvProblem;
import org.frisket.studio.csv.CsvTable;

/** The first row of a table: which column holds what. Columns that are not known stay unread, and are a problem. */
final class CsvHeaders {

	private static final Set<StockField> NEEDED = EnumSet.of(StockField.NAME, StockField.FAMILY);

	private final List<Optional<CsvColumn>> columns = new ArrayList<>();
	private final Map<StockField, CsvColumn> byField = new EnumMap<>(StockField.class);
	private final List<CsvProblem> problems = new ArrayList<>();

	CsvHeaders(CsvTable.Row row) {
		for (String header : row.cells()) {
			Optional<CsvColumn> column = Optional.empty();
			try {
				column = CsvColumn.of(header.strip());
				if (column.isEmpty() && !header.isBlank()) {
					problems.add(new CsvProblem(row.number(), header, NLS.bind(Messages.CsvHeaders_unknown, words())));
				}
				if (column.isPresent() && byField.putIfAbsent(column.get().field(), column.get()) != null) {
					problems.add(new CsvProblem(row.number(), header, Messages.CsvHeaders_twice));
					column = Optional.empty();
				}
			} catch (IllegalArgumentException unit) {
				problems.add(new CsvProblem(row.number(), header, unit.getMessage()));
			}
			columns.add(column);
		}
		NEEDED.stream().filter(field -> !byField.containsKey(field)).forEach(field -> problems
				.add(new CsvProblem(row.number(), "", NLS.bind(Messages.CsvHeaders_missing, field.word()))));
	}

	private static String words() {
		return Stream.of(StockField.values()).map(StockField::word).collect(Collectors.joining(", "));
	}

	/** How many headers mean something. */
	static int known(List<String> cells) {
		return (int) cells.stream().filter(cell -> Stream.of(StockField.values())
				.anyMatch(field -> cell.strip().toLowerCase(Locale.ROOT).startsWith(field.word()))).count();
	}

	/** In the order of the cells. */
	List<Optional<CsvColumn>> columns() {
		return columns;
	}

	/** What the column of a field is called; the field's own word if there is none. */
	String header(StockField field) {
		CsvColumn column = byField.get(field);
		return column == null ? field.word() : column.header();
	}

	List<CsvProblem> problems() {
		return problems;
	}

	/** Whether rows can be read at all. */
	boolean isUsable() {
		return byField.keySet().containsAll(NEEDED);
	}
}
