package org.frisket.benchmarks;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import org.frisket.model.Stage;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Sql;

/**
 * Ten desks at one PostgreSQL server (see {@link MeasuredBooks}); skipped without. Each looks for jobs and moves its own from
 * stage to stage, through the order book and by the same statements on a connection of its own.
 */
final class DesksBenchmark {

	private static final int DESKS = 10;
	private static final int JOBS = 20;
	private static final int ROUNDS = 60;
	private static final int WARM_UPS = 2;
	private static final int FEW = 5;
	private static final String SELECT = "SELECT j.id, j.number, j.revision, j.title, c.name, j.stage, j.stage_since, j.due, "
			+ "j.quantity, j.stock, j.words, j.changed, j.changed_by FROM orders_job j "
			+ "LEFT JOIN orders_customer c ON c.id = j.customer WHERE j.number = ?";

	private DesksBenchmark() {
	}

	/** What a desk does once with one of its jobs. */
	private interface Desk {
		void round(long job, int round) throws Exception;
	}

	static void run() throws Exception {
		Optional<String> address = MeasuredBooks.server();
		if (address.isEmpty()) {
			System.out.println("ten desks: skipped, for " + MeasuredBooks.ADDRESS + " names no server");
			return;
		}
		MeasuredBooks.inFolder(folder -> measure(folder, address.get()));
	}

	private static void measure(Path folder, String address) throws Exception {
		List<Desk> ours = new ArrayList<>();
		List<Desk> bare = new ArrayList<>();
		List<Connection> connections = new ArrayList<>();
		List<List<Long>> jobs = new ArrayList<>();
		for (int desk = 0; desk < DESKS; desk++) {
			// desks are programs of their own, with connections of their own
			String own = address + "&ApplicationName=desk" + desk;
			StudioFolder studio = new StudioFolder(folder.resolve("desk" + desk));
			Databases.prefer(studio, Optional.of(own));
			OrderBook book = new OrderBook(studio);
			List<Long> mine = new ArrayList<>();
			for (int job = 0; job < JOBS; job++) {
				mine.add(book.add(new NewOrder("Gift tags", "Tern Bookshop", Optional.empty(), 1, ""), "desk" + desk).number());
			}
			jobs.add(mine);
			String person = "desk" + desk;
			ours.add((job, round) -> {
				// one it is not at, whatever was done to it before
				book.stage(job, book.find(job).stage() == Stage.ORDERED ? Stage.DESIGNED : Stage.ORDERED, person, "");
			});
			Connection connection = MeasuredBooks.connect(own);
			connection.setAutoCommit(false);
			connections.add(connection);
			bare.add((job, round) -> bare(connection, job, round % 2 == 0 ? Stage.ORDERED : Stage.DESIGNED, person));
		}
		double[] times = { Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY };
		for (int round = -WARM_UPS; round < FEW; round++) {
			double our = seconds(ours, jobs);
			double theirs = seconds(bare, jobs);
			if (round >= 0) {
				times[0] = Math.min(times[0], our);
				times[1] = Math.min(times[1], theirs);
			}
		}
		for (Connection connection : connections) {
			connection.close();
		}
		System.out.printf("%d desks, %d looks and changes of stage: %.2f s, %.2f times as long as the bare statements "
				+ "(%.2f s; goal 1.5)%n", DESKS, DESKS * ROUNDS, times[0], times[0] / times[1], times[1]);
	}

	private static double seconds(List<Desk> desks, List<List<Long>> jobs) throws Exception {
		ExecutorService threads = Executors.newFixedThreadPool(DESKS);
		try {
			List<Callable<Void>> tasks = new ArrayList<>();
			for (int i = 0; i < desks.size(); i++) {
				Desk desk = desks.get(i);
				List<Long> mine = jobs.get(i);
				tasks.add(() -> {
					for (int round = 0; round < ROUNDS; round++) {
						desk.round(mine.get(round % JOBS), round / JOBS);
					}
					return null;
				});
			}
			long start = System.nanoTime();
			for (Future<Void> done : threads.invokeAll(tasks)) {
				done.get();
			}
			return (System.nanoTime() - start) / 1e9;
		} finally {
			threads.shutdown();
		}
	}

	/** What the order book asks for, and keeps, in as many transactions. */
	private static void bare(Connection connection, long job, Stage to, String person) throws SQLException {
		Stopwatch.sink = row(connection, job);
		connection.rollback();
		String id = row(connection, job);
		OffsetDateTime now = OffsetDateTime.now(ZoneOffset.UTC);
		Sql.update(connection, "UPDATE orders_job SET stage = ?, stage_since = ?, changed = ?, changed_by = ? WHERE id = ?", to,
				now, now, person, id);
		Sql.update(connection, "INSERT INTO orders_stage_change (job, place, changed_at, person, from_stage, to_stage, remark) "
				+ "VALUES (?, (SELECT COALESCE(MAX(place), 0) + 1 FROM orders_stage_change WHERE job = ?), ?, ?, ?, ?, ?)", id, id,
				now, person, Stage.ENQUIRY, to, "");
		connection.commit();
	}

	private static String row(Connection connection, long job) throws SQLException {
		return Sql.first(connection, SELECT, row -> {
			String id = row.getString(1);
			for (int column = 2; column <= 13; column++) {
				Stopwatch.sink = row.getObject(column);
			}
			return id;
		}, job).orElseThrow();
	}
}
