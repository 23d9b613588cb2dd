package org.frisket.orders.desk;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

import org.frisket.orders.Entry;
import org.frisket.orders.OrderException;
import org.frisket.orders.internal.JobRows;
import org.frisket.orders.internal.Transactions;
import org.frisket.studio.StudioFolder;

/**
 * Reads an order book for somebody who goes on looking at it: the newest jobs first, then all, then only what was
 * changed. Every call opens the studio's database, so it is none for the screen's thread. Messages of exceptions are
 * for people.
 */
public final class BookReader {

	/** By so much the clock of a desk may be slow, and its changes are still seen without reading everything. */
	private static final Duration SLOW_CLOCK = Duration.ofMinutes(10);

	private final Transactions transactions;

	public BookReader(StudioFolder studio) {
		transactions = new Transactions(studio, Clock.systemUTC());
	}

	/** The latest numbers. @param most how many at most */
	public KnownJobs newest(int most) throws IOException, OrderException {
		return transactions.read(connection -> read(connection, most));
	}

	public KnownJobs all() throws IOException, OrderException {
		return transactions.read(BookReader::all);
	}

	/**
	 * All as they are now. Only what was changed is read, unless that does not add up to what is in the order book: a
	 * job may be gone, or as it was before, as after a restore, or may have been changed by a desk whose clock is slow.
	 *
	 * @param known all as they were before
	 * @return the same object if nothing has changed
	 */
	public KnownJobs again(KnownJobs known) throws IOException, OrderException {
		return transactions.read(connection -> {
			Instant since = known.latest().map(latest -> latest.minus(SLOW_CLOCK)).orElse(Instant.EPOCH);
			List<Entry> changed = JobRows.changedSince(connection, since);
			KnownJobs now = known.with(changed, JobRows.unreadable(connection));
			return now.state().equals(JobRows.state(connection)) ? now : all(connection);
		});
	}

	private static KnownJobs all(Connection connection) throws SQLException {
		return read(connection, Long.MAX_VALUE);
	}

	private static KnownJobs read(Connection connection, long most) throws SQLException {
		return KnownJobs.of(JobRows.list(connection, most), JobRows.unreadable(connection));
	}
}
