package org.frisket.orders.reports;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

/** Rows of cells as text. */
final class Tables {

	private Tables() {
	}

	static String csv(List<List<String>> rows) {
		StringWriter text = new StringWriter();
		try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
			rows.forEach(csv::writeRecord);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return text.toString();
	}
}
