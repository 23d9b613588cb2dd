package org.frisket.orders.reports;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

/** Rows of cells as text. */
public final class Tables {

	private Tables() {
	}

	/** With a header first, as RFC 4180 has it. */
	public static String csv(List<List<String>> rows) {
		StringWriter text = new StringWriter();
		try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
			rows.forEach(csv::writeRecord);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return text.toString();
	}
}
