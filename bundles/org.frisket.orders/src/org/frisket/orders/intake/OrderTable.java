package org.frisket.orders.intake;

import java.nio.charset.CharacterCodingException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.orders.NewOrder;
import org.frisket.studio.csv.CsvProblem;
import org.frisket.studio.csv.CsvTable;
import org.frisket.studio.csv.CsvText;

/**
 * Reads tables of orders: any order of the columns, separated by commas, semicolons, tabs or bars, in UTF-8, UTF-16 with a
 * byte order mark or Latin-1. Columns that nothing is known of are left alone.
 */
final class OrderTable {

	private static final char[] SEPARATORS = { ',', ';', '\t', '|' };
	private static final int LONGEST_REFERENCE = 200;

	private final OrderMapping mapping;
	private final Map<OrderField, Integer> columns = new EnumMap<>(OrderField.class);
	private final List<OrderReading.Row> rows = new ArrayList<>();
	private final List<CsvProblem> problems = new ArrayList<>();
	private final Map<String, Long> references = new HashMap<>();

	private OrderTable(OrderMapping mapping) {
		this.mapping = mapping;
	}

	/** @param said of the columns; the others are guessed */
	static OrderReading read(byte[] file, OrderMapping said) {
		CsvText text;
		try {
			text = CsvText.of(file);
		} catch (CharacterCodingException e) {
			return nothing(said, new CsvProblem(1, "", Messages.OrderTable_encoding));
		}
		CsvTable cells = new CsvTable(text.text(), separator(text.text(), said));
		List<CsvTable.Row> filled = cells.rows().stream().filter(row -> !row.isEmpty()).toList();
		if (filled.isEmpty()) {
			return nothing(said, new CsvProblem(1, "", Messages.OrderTable_empty));
		}
		OrderTable table = new OrderTable(said.guessed(filled.get(0).cells()));
		table.problems.addAll(cells.problems());
		if (table.hasColumns(filled.get(0))) {
			filled.subList(1, filled.size()).forEach(table::add);
		}
		table.problems.sort(Comparator.comparingLong(CsvProblem::row));
		return new OrderReading(TableHead.of(filled), table.mapping, table.rows, table.problems, text.remark().stream().toList());
	}

	private static OrderReading nothing(OrderMapping said, CsvProblem problem) {
		return new OrderReading(TableHead.NONE, said, List.of(), List.of(problem), List.of());
	}

	/** That by which most headers mean something, else that which makes most of them. */
	private static char separator(String text, OrderMapping said) {
		String first = text.stripLeading().lines().findFirst().orElse("");
		char best = SEPARATORS[0];
		int most = -1;
		for (char separator : SEPARATORS) {
			List<CsvTable.Row> rows = new CsvTable(first, separator).rows();
			List<String> cells = rows.isEmpty() ? List.of() : rows.get(0).cells();
			int known = (int) said.guessed(cells).columns().values().stream()
					.filter(header -> cells.stream().anyMatch(cell -> OrderMapping.isSame(cell, header))).count();
			int value = known * first.length() + cells.size();
			if (value > most) {
				most = value;
				best = separator;
			}
		}
		return best;
	}

	private boolean hasColumns(CsvTable.Row headers) {
		mapping.columns().forEach((field, header) -> {
			List<Integer> there = new ArrayList<>();
			for (int i = 0; i < headers.cells().size(); i++) {
				if (OrderMapping.isSame(headers.cells().get(i), header)) {
					there.add(i);
				}
			}
			if (there.size() == 1) {
				columns.put(field, there.get(0));
			} else {
				problems.add(new CsvProblem(headers.number(), header, NLS.bind(
						there.isEmpty() ? Messages.OrderTable_noColumn : Messages.OrderTable_twoColumns, field.word())));
			}
		});
		if (!mapping.columns().containsKey(OrderField.TITLE)) {
			problems.add(new CsvProblem(headers.number(), "", NLS.bind(Messages.OrderTable_noTitle,
					String.join(", ", headers.cells()))));
		}
		return problems.stream().noneMatch(problem -> problem.row() == headers.number());
	}

	/** What may be wrong with a cell. */
	private interface Value<T> {
		T of(String cell);
	}

	private void add(CsvTable.Row row) {
		int before = problems.size();
		Optional<LocalDate> due = value(row, OrderField.DUE,
				cell -> cell.isEmpty() ? Optional.<LocalDate>empty() : Optional.of(DateForm.parse(cell, mapping.dates())));
		Integer quantity = value(row, OrderField.QUANTITY, OrderTable::quantity);
		String reference = value(row, OrderField.REFERENCE, OrderTable::reference);
		value(row, OrderField.TITLE, OrderTable::title);
		value(row, OrderField.CUSTOMER, OrderTable::kept);
		value(row, OrderField.NOTES, OrderTable::kept);
		if (problems.size() > before) {
			return;
		}
		try {
			NewOrder order = new NewOrder(cell(row, OrderField.TITLE), cell(row, OrderField.CUSTOMER), due, quantity,
					cell(row, OrderField.NOTES));
			Long twice = reference.isEmpty() ? null : references.putIfAbsent(reference, row.number());
			if (twice != null) {
				problem(row, OrderField.REFERENCE, NLS.bind(Messages.OrderTable_sameReference, reference, twice));
			} else {
				rows.add(new OrderReading.Row(row.number(), order, reference));
			}
		} catch (IllegalArgumentException wrong) {
			problems.add(new CsvProblem(row.number(), "", wrong.getMessage()));
		}
	}

	private <T> T value(CsvTable.Row row, OrderField field, Value<T> value) {
		try {
			return value.of(cell(row, field));
		} catch (IllegalArgumentException wrong) {
			problem(row, field, wrong.getMessage());
			return null;
		}
	}

	private void problem(CsvTable.Row row, OrderField field, String message) {
		problems.add(new CsvProblem(row.number(), mapping.headers().getOrDefault(field, field.word()), message));
	}

	private String cell(CsvTable.Row row, OrderField field) {
		Integer column = columns.get(field);
		return column == null || column >= row.cells().size() ? "" : row.cells().get(column).strip();
	}

	private static String title(String cell) {
		if (cell.isEmpty()) {
			throw new IllegalArgumentException(Messages.OrderTable_emptyTitle);
		}
		return kept(cell);
	}

	/** A job is kept as XML 1.0, which has no place for some characters. */
	private static String kept(String cell) {
		cell.codePoints().filter(c -> c < ' ' && c != '\t' && c != '\n' && c != '\r' || c == 0xFFFE || c == 0xFFFF)
				.findFirst().ifPresent(c -> {
					throw new IllegalArgumentException(NLS.bind(Messages.OrderTable_character, "U+%04X".formatted(c)));
				});
		return cell;
	}

	private static Integer quantity(String cell) {
		if (cell.isEmpty()) {
			return 1;
		}
		if (!cell.matches("0*[1-9]\\d{0,8}")) {
			throw new IllegalArgumentException(NLS.bind(Messages.OrderTable_quantity, cell));
		}
		return Integer.valueOf(cell);
	}

	private static String reference(String cell) {
		if (cell.length() > LONGEST_REFERENCE) {
			throw new IllegalArgumentException(NLS.bind(Messages.OrderTable_longReference, LONGEST_REFERENCE));
		}
		return kept(cell);
	}
}
