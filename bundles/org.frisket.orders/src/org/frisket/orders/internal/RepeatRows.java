package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Job;
import org.frisket.orders.Entry;
import org.frisket.studio.store.Sql;

/** Which job is a repeat of which: what documents say, so that it can be asked from both ends. */
public final class RepeatRows {

	private RepeatRows() {
	}

	/** What a new job says of itself, as far as those jobs are known here. */
	static void add(Connection connection, Job job) throws SQLException {
		int place = 0;
		for (String original : job.getRepeats()) {
			if (!original.equals(job.getId()) && JobRows.find(connection, original).isPresent()) {
				Sql.update(connection, "INSERT INTO orders_repeat (job, place, of_job) VALUES (?, ?, ?)", job.getId(), place++,
						original);
			}
		}
	}

	/** The latest first. */
	public static List<Entry> originals(Connection connection, String job) throws SQLException {
		return entries(connection, "SELECT of_job FROM orders_repeat WHERE job = ? ORDER BY place", job);
	}

	/** The latest number first. */
	public static List<Entry> repeats(Connection connection, String job) throws SQLException {
		return entries(connection, "SELECT r.job FROM orders_repeat r JOIN orders_job j ON j.id = r.job WHERE r.of_job = ? "
				+ "ORDER BY j.number DESC", job);
	}

	private static List<Entry> entries(Connection connection, String select, String job) throws SQLException {
		List<Entry> entries = new ArrayList<>();
		for (String id : Sql.list(connection, select, row -> row.getString(1), job)) {
			Optional<Entry> entry = JobRows.find(connection, id);
			entry.ifPresent(entries::add);
		}
		return entries;
	}
}
