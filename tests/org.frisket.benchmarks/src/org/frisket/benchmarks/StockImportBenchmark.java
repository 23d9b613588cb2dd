package org.frisket.benchmarks;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.frisket.material.ShelfException;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.material.csv.StockCsv;
import org.frisket.material.csv.StockImport;
import org.frisket.material.sizes.Format;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/** A table of stock into the studio's store, against one bare batch of the same rows into the same tables. */
final class StockImportBenchmark {

	private static final int ROWS = 100_000;
	private static final int BATCH = 1000;
	private static final String STOCK = "INSERT INTO stock (id, revision, name, name_key, description, family, grammage, "
			+ "colour, finish, grain, on_hand, low_water, abrasion, notes, changed) "
			+ "VALUES (?, 1, ?, ?, '', 'CARD', ?, ?, 'UNKNOWN', 'UNKNOWN', 0, 0, 1, '', ?)";
	private static final String SIZE = "INSERT INTO stock_size (stock, place, form, width, height) VALUES (?, ?, 'SHEET', ?, ?)";

	private StockImportBenchmark() {
	}

	private interface Import {

		void into(Store store) throws IOException, ShelfException;
	}

	static void run() throws Exception {
		List<Stock> stocks = IntStream.range(0, ROWS).mapToObj(StockTableBenchmark::stock).toList();
		StringWriter table = new StringWriter();
		StockCsv.write(stocks, table);
		byte[] bytes = table.toString().getBytes(StandardCharsets.UTF_8);
		double[] ms = new double[2];
		// in turn, so that noise meets both; the first round warms up
		for (int round = 0; round < 2; round++) {
			ms[0] = timed(store -> {
				StockShelf shelf = new StockShelf(store);
				StockImport.of(bytes, shelf, false).run(shelf);
			});
			ms[1] = timed(store -> store.<Void, RuntimeException>change(connection -> bare(connection, stocks)));
		}
		System.out.printf("table of %d rows of stock into the store: %.0f ms, %.0f rows/s, %.2f times as long as a bare batch; "
				+ "%.0f MB of heap are in use after it%n", ROWS, ms[0], ROWS / ms[0] * 1000, ms[0] / ms[1], usedMegabytes());
	}

	private static double timed(Import work) throws Exception {
		Path folder = Files.createTempDirectory("frisket-import");
		try {
			long start;
			try (Store store = Store.open(new StudioFolder(folder), StockShelf.AREA)) {
				start = System.nanoTime();
				work.into(store);
				double ms = (System.nanoTime() - start) / 1e6;
				if (new StockShelf(store).ids().size() != ROWS) {
					throw new IllegalStateException("not all rows are there");
				}
				return ms;
			}
		} finally {
			try (Stream<Path> files = Files.walk(folder)) {
				for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(file);
				}
			}
		}
	}

	private static Void bare(Connection connection, List<Stock> stocks) throws SQLException {
		try (PreparedStatement stock = connection.prepareStatement(STOCK);
				PreparedStatement size = connection.prepareStatement(SIZE)) {
			OffsetDateTime now = OffsetDateTime.now(ZoneOffset.UTC);
			int waiting = 0;
			for (Stock each : stocks) {
				stock.setString(1, each.id());
				stock.setString(2, each.name());
				stock.setString(3, each.name().toLowerCase(Locale.ROOT));
				stock.setBigDecimal(4, each.statedGrammage().orElseThrow());
				stock.setString(5, each.colour());
				stock.setObject(6, now);
				stock.addBatch();
				for (int place = 0; place < each.sizes().size(); place++) {
					Format.Sheet sheet = (Format.Sheet) each.sizes().get(place);
					size.setString(1, each.id());
					size.setInt(2, place);
					size.setBigDecimal(3, sheet.width());
					size.setBigDecimal(4, sheet.height());
					size.addBatch();
				}
				if (++waiting == BATCH) {
					stock.executeBatch();
					size.executeBatch();
					waiting = 0;
				}
			}
			stock.executeBatch();
			size.executeBatch();
			return null;
		}
	}

	private static double usedMegabytes() {
		System.gc();
		Runtime runtime = Runtime.getRuntime();
		return (runtime.totalMemory() - runtime.freeMemory()) / 1048576.0;
	}
}
