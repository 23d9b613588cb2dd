package org.frisket.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.desk.BookColumn;
import org.frisket.orders.desk.BookNames;
import org.frisket.orders.desk.BookQuery;
import org.frisket.orders.desk.BookReader;
import org.frisket.orders.desk.BookSight;
import org.frisket.orders.desk.BookTable;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;

/** An order book of many jobs: reading it against the bare statement, finding in it against a bare loop. */
final class OrderBookBenchmark {

	private static final int JOBS = 100_000;
	private static final int FIRST = 200;
	private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
	private static final String INSERT = "INSERT INTO orders_job (id, number, revision, title, stage, stage_since, due, quantity, stock, "
			+ "words, created, changed, changed_by) VALUES (?, ?, 1, ?, ?, ?, ?, 1, 'card', ?, ?, ?, 'desk')";
	private static final BookNames NAMES = new BookNames() {

		@Override
		public String stage(Stage stage) {
			return stage.getLiteral();
		}

		@Override
		public String stock(String id) {
			return id;
		}
	};

	private OrderBookBenchmark() {
	}

	private interface Reading<T> {
		T of() throws IOException, OrderException;
	}

	private static <T> Supplier<T> reading(Reading<T> reading) {
		return () -> {
			try {
				return reading.of();
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			} catch (OrderException e) {
				throw new IllegalStateException(e);
			}
		};
	}

	static void run() throws Exception {
		Path folder = Files.createTempDirectory("frisket-orders");
		try {
			measure(new StudioFolder(folder));
		} finally {
			try (Stream<Path> files = Files.walk(folder)) {
				for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
					Files.delete(file);
				}
			}
		}
	}

	private static void measure(StudioFolder studio) throws Exception {
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<Void, RuntimeException>change(OrderBookBenchmark::fill);
		}
		BookReader reader = new BookReader(studio);
		double[] read = Stopwatch.mediansOfFew(reading(() -> reader.newest(FIRST)), reading(reader::all), reading(() -> bare(studio)));
		System.out.printf("order book of %d jobs: first %d rows in %.0f ms, all in %.0f ms, %.2f times as long as the bare statement%n",
				JOBS, FIRST, read[0], read[1], read[1] / read[2]);
		var known = reader.all();
		double[] again = Stopwatch.mediansOfFew(reading(() -> reader.again(known)));
		System.out.printf("looking again at an order book in which nothing has changed: %.0f ms%n", again[0]);
		find(known.jobs());
		OrderBook book = new OrderBook(studio);
		int[] stage = { 0 };
		double[] moved = Stopwatch.mediansOfFew(reading(() -> book.stage(JOBS / 2, Stage.values()[++stage[0] % 2], "desk", "")));
		System.out.printf("a change of stage among them: %.0f ms%n", moved[0]);
	}

	private static void find(List<Entry> jobs) {
		BookTable table = BookTable.of(jobs, NAMES);
		BookQuery query = BookQuery.ALL.sortedBy(BookColumn.TITLE);
		BookSight before = table.find(query.withText("tag 1"), TODAY);
		double[] found = Stopwatch.mediansOfFew(() -> table.find(query.withText("tag 12"), TODAY),
				() -> table.find(query.withText("tag 12"), TODAY, before),
				() -> jobs.stream().filter(job -> job.words().contains("tag") && job.words().contains("12")).toList());
		System.out.printf("a key while looking for a job among %d: %.1f ms anew, %.1f ms after a letter more; %.2f and %.2f times as "
				+ "long as a bare loop%n", JOBS, found[0], found[1], found[0] / found[2], found[1] / found[2]);
		double[] sorted = Stopwatch.mediansOfFew(() -> BookTable.of(jobs, NAMES).find(query, TODAY));
		System.out.printf("sorting them by title for the first time: %.0f ms%n", sorted[0]);
	}

	private static Void fill(Connection connection) throws SQLException {
		OffsetDateTime noon = TODAY.atTime(12, 0).atOffset(ZoneOffset.UTC).minusDays(1);
		Sql.updateAll(connection, INSERT, () -> IntStream.rangeClosed(1, JOBS).mapToObj(number -> new Object[] { "job" + number,
				(long) number, "Gift tag " + number, Stage.values()[number % Stage.values().length], noon,
				TODAY.plusDays(number % 90 - 45), "gift tag " + number + " odila quern", noon, noon }).iterator());
		return null;
	}

	/** The rows as the database hands them over, kept in no form. */
	private static List<Object> bare(StudioFolder studio) throws IOException {
		try (Store store = Store.openForReading(studio, OrderBook.AREA)) {
			return store.<List<Object>, RuntimeException>read(connection -> new ArrayList<>(Sql.list(connection,
					"SELECT id, number, revision, title, stage, stage_since, due, quantity, stock, words, changed, changed_by "
							+ "FROM orders_job ORDER BY number DESC",
					row -> row.getString(1) + row.getLong(2) + row.getString(4) + row.getString(10))));
		}
	}
}
