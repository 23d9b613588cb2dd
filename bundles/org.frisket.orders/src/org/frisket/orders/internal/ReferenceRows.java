package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.studio.store.Sql;

/** What orders are called where they come from. */
public final class ReferenceRows {

	private record Known(String reference, long number) {
	}

	private ReferenceRows() {
	}

	/** The numbers of all jobs that have one. */
	public static Map<String, Long> numbers(Connection connection) throws SQLException {
		Map<String, Long> numbers = new HashMap<>();
		Sql.list(connection, "SELECT r.reference, j.number FROM orders_reference r JOIN orders_job j ON j.id = r.job",
				row -> new Known(row.getString(1), row.getLong(2))).forEach(each -> numbers.put(each.reference(), each.number()));
		return numbers;
	}

	public static Optional<String> ofJob(Connection connection, String job) throws SQLException {
		return Sql.first(connection, "SELECT reference FROM orders_reference WHERE job = ?", row -> row.getString(1), job);
	}

	/** @param rows a reference and the id of its job each */
	static void addAll(Connection connection, List<Object[]> rows) throws SQLException {
		Sql.updateAll(connection, "INSERT INTO orders_reference (reference, job) VALUES (?, ?)", rows);
	}
}
