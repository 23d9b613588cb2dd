package org.frisket.benchmarks;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.StoredJob;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;

/** A large job kept in the order book, against a bare UPDATE of the bytes of its file in a database that is open. */
final class JobSaveBenchmark {

	/** In bytes; H2 takes no longer text in one piece. */
	private static final int LARGE = 1_000_000;
	private static final int OUTLINES = 40;

	private JobSaveBenchmark() {
	}

	static void run() throws Exception {
		MeasuredBooks.each(JobSaveBenchmark::measure);
	}

	private static void measure(String where, StudioFolder studio) throws Exception {
		OrderBook book = new OrderBook(studio);
		StoredJob stored = book.open(book.add(new NewOrder("Banner", "Tern Bookshop", Optional.empty(), 1, ""), "desk").number());
		Job job = stored.job();
		draw(job);
		byte[] file = JobFile.toBytes(job);
		String text = new String(file, StandardCharsets.UTF_8);
		long[] revision = { stored.entry().revision() };
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.change(connection -> Sql.update(connection, "CREATE TABLE bare (content VARCHAR(" + (1 << 20) + ") NOT NULL)"));
			store.change(connection -> Sql.update(connection, "INSERT INTO bare (content) VALUES (?)", text));
			double[] times = Stopwatch.mediansOfFew(
					MeasuredBooks.asking(() -> revision[0] = book.save(job, revision[0], "desk").revision()),
					MeasuredBooks.asking(
							() -> store.change(connection -> Sql.update(connection, "UPDATE bare SET content = ?", text))),
					MeasuredBooks.asking(() -> JobFile.toBytes(job)));
			System.out.printf("a job of %d kB kept %s: %.0f ms, %.2f times as long as a bare update (%.0f ms); its file made: "
					+ "%.0f ms%n", file.length / 1000, where, times[0], times[0] / times[1], times[1], times[2]);
		}
	}

	/** Of many corners in no order, so that it packs as drawings do. */
	private static void draw(Job job) {
		Random random = new Random(5);
		Layer layer = Jobs.addLayer(job, "Front");
		for (int outline = 0; outline < OUTLINES; outline++) {
			StringBuilder path = new StringBuilder("M0 0");
			while (path.length() < (LARGE - 20_000) / OUTLINES) {
				path.append(String.format(Locale.ROOT, "L%.3f %.3f", random.nextDouble() * 300, random.nextDouble() * 200));
			}
			Jobs.addOutline(layer, path.append('Z').toString());
		}
	}
}
