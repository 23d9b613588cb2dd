package org.frisket.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * Order books with nothing in them: one in a folder, and one on the PostgreSQL server whose address is in
 * {@value #ADDRESS}, if there is one.
 */
final class MeasuredBooks {

	static final String ADDRESS = "FRISKET_BENCHMARK_DATABASE";

	private static final String SCHEMA = "measured";

	private MeasuredBooks() {
	}

	/** What is measured of one. */
	interface Measure {

		/** @param where as it is printed */
		void of(String where, StudioFolder studio) throws Exception;
	}

	/** What needs a folder of its own for a while. */
	interface InFolder {
		void run(Path folder) throws Exception;
	}

	/** What asks the order book. */
	interface Asking<T> {
		T ask() throws IOException, OrderException;
	}

	/** The same for the stopwatch. */
	static <T> Supplier<T> asking(Asking<T> asking) {
		return () -> {
			try {
				return asking.ask();
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			} catch (OrderException e) {
				throw new IllegalStateException(e);
			}
		};
	}

	static Optional<String> server() {
		return Optional.ofNullable(System.getenv(ADDRESS)).filter(address -> !address.isEmpty());
	}

	static Connection connect(String address) throws SQLException {
		PGSimpleDataSource source = new PGSimpleDataSource();
		source.setUrl(address);
		return source.getConnection();
	}

	static void each(Measure measure) throws Exception {
		inFolder(folder -> measure.of("in a file", new StudioFolder(folder)));
		Optional<String> server = server();
		if (server.isEmpty()) {
			System.out.println("the same on a server: skipped, for " + ADDRESS + " names none");
			return;
		}
		schema(server.get(), "CREATE SCHEMA " + SCHEMA);
		try {
			Databases.choose(Optional.of(server.get() + "&currentSchema=" + SCHEMA));
			inFolder(folder -> measure.of("on a server", new StudioFolder(folder)));
		} finally {
			Databases.choose(Optional.empty());
			schema(server.get(), "DROP SCHEMA " + SCHEMA + " CASCADE");
		}
	}

	private static void schema(String address, String sql) throws SQLException {
		try (Connection connection = connect(address); Statement statement = connection.createStatement()) {
			statement.execute(sql);
		}
	}

	static void inFolder(InFolder work) throws Exception {
		Path folder = Files.createTempDirectory("frisket-orders");
		try {
			work.run(folder);
		} finally {
			delete(folder);
		}
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
				Files.delete(file);
			}
		}
	}
}
