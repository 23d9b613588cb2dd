package org.frisket.material.csv;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.InvalidStockException;
import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockField;
import org.frisket.material.StockIds;
import org.frisket.model.WholeFile;
import org.frisket.studio.NameKey;
import org.frisket.studio.csv.CsvProblem;
import org.frisket.studio.csv.CsvTable;
import org.frisket.studio.csv.CsvText;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

/**
 * Tables of stock. Read: any order of the columns, separated by commas, semicolons or tabs, with decimal points or commas
 * throughout, in UTF-8, UTF-16 with a byte order mark or Latin-1. Written: all columns, commas, decimal points; reading
 * it gives the same stock.
 */
public final class StockCsv {

	private static final char BYTE_ORDER_MARK = '\uFEFF';
	private static final char[] SEPARATORS = { ',', ';', '\t' };
	private static final Map<StockField, String> UNITS = Map.of(StockField.GRAMMAGE, " g/m²", StockField.BASIS_WEIGHT,
			" lb", StockField.CALIPER, " mm");

	private final Set<String> taken;
	private final List<CsvReading.Row> rows = new ArrayList<>();
	private final List<CsvProblem> problems = new ArrayList<>();
	private final Map<String, Long> ids = new HashMap<>();
	private final Map<String, Long> names = new HashMap<>();

	private StockCsv(Set<String> taken) {
		this.taken = taken;
	}

	/**
	 * Reads a table. What is wrong with it stands in the result.
	 *
	 * @param taken ids that stock without one must not be given
	 */
	public static CsvReading read(byte[] file, Set<String> taken) {
		CsvText text;
		try {
			text = CsvText.of(file);
		} catch (CharacterCodingException e) {
			return unusable(List.of(new CsvProblem(1, "", Messages.StockCsv_encoding)));
		}
		CsvTable table = new CsvTable(text.text(), separator(text.text()));
		List<CsvTable.Row> filled = table.rows().stream().filter(row -> !row.isEmpty()).toList();
		if (filled.isEmpty()) {
			return unusable(table.problems().isEmpty() ? List.of(new CsvProblem(1, "", Messages.StockCsv_empty))
					: table.problems());
		}
		CsvHeaders headers = new CsvHeaders(filled.get(0));
		if (!headers.isUsable()) {
			return unusable(headers.problems());
		}
		StockCsv csv = new StockCsv(taken);
		csv.problems.addAll(headers.problems());
		csv.problems.addAll(table.problems());
		csv.rows(headers, filled.subList(1, filled.size()));
		csv.problems.sort(Comparator.comparingLong(CsvProblem::row));
		return new CsvReading(csv.rows, csv.problems, text.remark().stream().toList(), true);
	}

	private static CsvReading unusable(List<CsvProblem> problems) {
		return new CsvReading(List.of(), problems, List.of(), false);
	}

	/** That by which most headers mean something. */
	private static char separator(String text) {
		String first = text.stripLeading().lines().findFirst().orElse("");
		char best = SEPARATORS[0];
		int most = 0;
		for (char separator : SEPARATORS) {
			List<CsvTable.Row> rows = new CsvTable(first, separator).rows();
			int known = rows.isEmpty() ? 0 : CsvHeaders.known(rows.get(0).cells());
			if (known > most) {
				most = known;
				best = separator;
			}
		}
		return best;
	}

	private void rows(CsvHeaders headers, List<CsvTable.Row> cells) {
		boolean comma = cells.stream().anyMatch(row -> hasDecimalComma(headers, row));
		Map<CsvTable.Row, StockBuilder> builders = new LinkedHashMap<>();
		for (CsvTable.Row row : cells) {
			builder(headers, row, comma).ifPresent(builder -> builders.put(row, builder));
		}
		Set<String> used = new HashSet<>(taken);
		builders.values().forEach(builder -> builder.id().ifPresent(used::add));
		builders.forEach((row, builder) -> build(headers, row, builder, used));
	}

	/** A table has either points or commas: one that has both cannot be told from a slip. */
	private static boolean hasDecimalComma(CsvHeaders headers, CsvTable.Row row) {
		for (int i = 0; i < Math.min(row.cells().size(), headers.columns().size()); i++) {
			Optional<CsvColumn> column = headers.columns().get(i);
			if (column.isPresent() && column.get().field().isNumber() && row.cells().get(i).indexOf(',') >= 0) {
				return true;
			}
		}
		return false;
	}

	private Optional<StockBuilder> builder(CsvHeaders headers, CsvTable.Row row, boolean comma) {
		int width = headers.columns().size();
		if (row.cells().size() != width) {
			problems.add(new CsvProblem(row.number(), "", NLS.bind(Messages.StockCsv_cells, row.cells().size(), width)));
			return Optional.empty();
		}
		StockBuilder builder = Stock.named(null);
		boolean good = true;
		for (int i = 0; i < width; i++) {
			Optional<CsvColumn> column = headers.columns().get(i);
			try {
				if (column.isPresent()) {
					column.get().set(builder, row.cells().get(i), comma);
				}
			} catch (IllegalArgumentException wrong) {
				problems.add(new CsvProblem(row.number(), column.get().header(), wrong.getMessage()));
				good = false;
			}
		}
		return good ? Optional.of(builder) : Optional.empty();
	}

	private void build(CsvHeaders headers, CsvTable.Row row, StockBuilder builder, Set<String> used) {
		try {
			boolean named = builder.id().isPresent();
			Stock stock = builder.build();
			if (!named) {
				stock = builder.id(StockIds.free(stock.name(), used::contains)).build();
				used.add(stock.id());
			}
			if (isOnce(headers, StockField.ID, ids, stock.id(), row)
					&& isOnce(headers, StockField.NAME, names, NameKey.of(stock.name()), row)) {
				rows.add(new CsvReading.Row(row.number(), stock));
			}
		} catch (InvalidStockException wrong) {
			problems.add(new CsvProblem(row.number(), headers.header(wrong.field()), wrong.getMessage()));
		} catch (IllegalArgumentException wrong) {
			problems.add(new CsvProblem(row.number(), "", wrong.getMessage()));
		}
	}

	private boolean isOnce(CsvHeaders headers, StockField field, Map<String, Long> seen, String key, CsvTable.Row row) {
		Long before = seen.putIfAbsent(key, row.number());
		if (before != null) {
			problems.add(new CsvProblem(row.number(), headers.header(field), NLS.bind(Messages.StockCsv_twice, before)));
		}
		return before == null;
	}

	/** Writes a table with all columns to a file, wholly or not at all, in UTF-8 that spreadsheets know by its mark. */
	public static void write(List<Stock> stocks, Path file) throws IOException {
		WholeFile.write(out -> {
			Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
			writer.write(BYTE_ORDER_MARK);
			write(stocks, writer);
			writer.flush();
		}, file);
	}

	/** Writes a table with all columns. */
	public static void write(List<Stock> stocks, Writer out) throws IOException {
		CsvWriter csv = CsvWriter.builder().fieldSeparator(SEPARATORS[0]).lineDelimiter(LineDelimiter.CRLF).build(out);
		csv.writeRecord(Stream.of(StockField.values())
				.map(field -> field.word() + UNITS.getOrDefault(field, "")).toList());
		for (Stock stock : stocks) {
			csv.writeRecord(Stream.of(StockField.values()).map(field -> field.text(stock)).toList());
		}
		csv.flush();
	}
}
