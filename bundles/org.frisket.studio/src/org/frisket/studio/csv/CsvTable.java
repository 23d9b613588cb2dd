package org.frisket.studio.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;

/**
 * The rows of a text as cells. A row whose quotes do not match is a problem of its own; the rows go on at the next line
 * of the text.
 */
public final class CsvTable {

	private final String text;
	private final CsvReader.CsvReaderBuilder reader;
	private final List<Row> rows = new ArrayList<>();
	private final List<CsvProblem> problems = new ArrayList<>();
	/** Where the row that is read next begins, and how many are before it. */
	private int offset;
	private long number;

	/** @param number as a spreadsheet counts */
	public record Row(long number, List<String> cells) {

		public boolean isEmpty() {
			return cells.stream().allMatch(String::isBlank);
		}
	}

	public CsvTable(String text, char separator) {
		this.text = text;
		reader = CsvReader.builder().fieldSeparator(separator).skipEmptyLines(false).allowExtraFields(true)
				.allowMissingFields(true).allowUnclosedQuote(false);
		while (offset < text.length()) {
			readOn();
		}
	}

	/** Up to the end or the next row with broken quotes. */
	private void readOn() {
		StringReader rest = new StringReader(text);
		long line = 1;
		try (CsvReader<CsvRecord> records = reader.ofCsvRecord(skipped(rest))) {
			Iterator<CsvRecord> iterator = records.iterator();
			while (iterator.hasNext()) {
				CsvRecord read = iterator.next();
				rows.add(new Row(++number, List.copyOf(read.getFields())));
				line = read.getStartingLineNumber() + 1 + breaks(read);
			}
			offset = text.length();
		} catch (CsvParseException broken) {
			skipLines(line);
			problems.add(new CsvProblem(++number, "", Messages.CsvTable_quotes));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private StringReader skipped(StringReader reader) throws IOException {
		reader.skip(offset);
		return reader;
	}

	private static long breaks(CsvRecord read) {
		return read.getFields().stream().mapToLong(field -> field.chars().filter(c -> c == '\n').count()
				+ field.replace("\r\n", "").chars().filter(c -> c == '\r').count()).sum();
	}

	private void skipLines(long lines) {
		for (long i = 0; i < lines && offset < text.length(); i++) {
			while (offset < text.length() && text.charAt(offset) != '\n' && text.charAt(offset) != '\r') {
				offset++;
			}
			offset += text.startsWith("\r\n", offset) ? 2 : 1;
		}
	}

	/** Those that could be read, in their order. */
	public List<Row> rows() {
		return rows;
	}

	public List<CsvProblem> problems() {
		return problems;
	}
}
