package org.frisket.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.csv.CsvReading;
import org.frisket.material.csv.StockCsv;
import org.frisket.material.sizes.Formats;

/** Reading and checking a table of stock, against merely splitting its lines. */
final class StockTableBenchmark {

	private static final int ROWS = 100_000;

	private StockTableBenchmark() {
	}

	static void run() throws IOException {
		StringWriter table = new StringWriter();
		StockCsv.write(IntStream.range(0, ROWS).mapToObj(StockTableBenchmark::stock).toList(), table);
		byte[] bytes = table.toString().getBytes(StandardCharsets.UTF_8);
		double[] ms = Stopwatch.mediansOfFew(() -> read(bytes), () -> split(bytes));
		System.out.printf("table of %d rows of stock: %.0f rows/s, %.1f times as long as splitting its lines%n", ROWS,
				ROWS / ms[0] * 1000, ms[0] / ms[1]);
	}

	static Stock stock(int number) {
		return Stock.named("Harbour card " + number).family(StockFamily.CARD)
				.grammage(BigDecimal.valueOf(1000 + number % 3000, 1)).colour("sea \"green\", pale")
				.sizes(List.of(Formats.parse("12x12in"), Formats.parse("A4"))).build();
	}

	private static CsvReading read(byte[] table) {
		CsvReading reading = StockCsv.read(table, Set.of());
		if (reading.rows().size() != ROWS) {
			throw new IllegalStateException(reading.problems().toString());
		}
		return reading;
	}

	private static Integer split(byte[] table) {
		try (BufferedReader lines = new BufferedReader(new StringReader(new String(table, StandardCharsets.UTF_8)))) {
			int cells = 0;
			for (String line = lines.readLine(); line != null; line = lines.readLine()) {
				cells += line.split(",").length;
			}
			return cells;
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
