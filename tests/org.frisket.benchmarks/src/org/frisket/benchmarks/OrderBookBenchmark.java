package org.frisket.benchmarks;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

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
import org.frisket.orders.desk.KnownJobs;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;

/**
 * An order book of many jobs: reading it against the bare statement, finding in it against a bare loop.
 * {@code FRISKET_BENCHMARK_JOBS} says how many.
 */
final class OrderBookBenchmark {

	static final int JOBS = Integer.parseInt(System.getenv().getOrDefault("FRISKET_BENCHMARK_JOBS", "100000"));
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

	static void run() throws Exception {
		MeasuredBooks.each(OrderBookBenchmark::ask);
		// what is found on the screen is asked of no database
		MeasuredBooks.inFolder(folder -> look(new BookReader(filled(new StudioFolder(folder)))));
	}

	static StudioFolder filled(StudioFolder studio) throws IOException {
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<Void, RuntimeException>change(OrderBookBenchmark::fill);
		}
		return studio;
	}

	private static void ask(String where, StudioFolder studio) throws Exception {
		BookReader reader = new BookReader(filled(studio));
		double[] read = Stopwatch.mediansOfFew(MeasuredBooks.asking(() -> reader.newest(FIRST)),
				MeasuredBooks.asking(reader::all), MeasuredBooks.asking(() -> bare(studio)));
		System.out.printf("order book of %d jobs %s: first %d rows in %.0f ms, all in %.0f ms, %.2f times as long as the bare "
				+ "statement%n", JOBS, where, FIRST, read[0], read[1], read[1] / read[2]);
		KnownJobs known = reader.all();
		double[] again = Stopwatch.mediansOfFew(MeasuredBooks.asking(() -> reader.again(known)));
		System.out.printf("looking again at an order book %s in which nothing has changed: %.0f ms%n", where, again[0]);
		OrderBook book = new OrderBook(studio);
		int[] stage = { 0 };
		double[] moved = Stopwatch.mediansOfFew(
				MeasuredBooks.asking(() -> book.stage(JOBS / 2, Stage.values()[++stage[0] % 2], "desk", "")));
		System.out.printf("a change of stage among them %s: %.1f ms%n", where, moved[0]);
	}

	private static void look(BookReader reader) throws IOException, OrderException {
		reader.all();
		Stopwatch.sink = null;
		long nothing = used();
		List<Entry> jobs = reader.all().jobs();
		long ofJobs = used() - nothing;
		BookTable table = BookTable.of(jobs, NAMES);
		Stopwatch.sink = table.find(BookQuery.ALL.sortedBy(BookColumn.TITLE).withText("tag"), TODAY);
		long ofTable = used() - nothing - ofJobs;
		System.out.printf("memory of an open order book of %d jobs: %.1f MB, %d bytes a job and %d of the table for it%n", JOBS,
				(ofJobs + ofTable) / 1e6, ofJobs / JOBS, ofTable / JOBS);
		find(jobs, table);
	}

	/** What the heap holds, in bytes, after what nobody needs was cleared away. */
	private static long used() {
		long least = Long.MAX_VALUE;
		for (int i = 0; i < 4; i++) {
			System.gc();
			least = Math.min(least, ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed());
		}
		return least;
	}

	private static void find(List<Entry> jobs, BookTable table) {
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

	static void fill(StudioFolder studio) throws IOException {
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<Void, RuntimeException>change(OrderBookBenchmark::fill);
		}
	}

	private static Void fill(Connection connection) throws SQLException {
		OffsetDateTime noon = TODAY.atTime(12, 0).atOffset(ZoneOffset.UTC).minusDays(1);
		Sql.updateAll(connection, INSERT, () -> IntStream.rangeClosed(1, JOBS).mapToObj(number -> new Object[] { "job" + number,
				(long) number, "Gift tag " + number, Stage.values()[number % Stage.values().length], noon,
				TODAY.plusDays(number % 90 - 45), "gift tag " + number + " odila quern", noon,
				// not all at the same time: what was changed last is read again
				noon.minusMinutes(5L * (JOBS - number)) }).iterator());
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
