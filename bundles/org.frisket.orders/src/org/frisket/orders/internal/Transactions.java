package org.frisket.orders.internal;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Store;

/** The order book's database, opened for one transaction at a time. */
public final class Transactions {

	private final StudioFolder studio;
	private final Clock clock;
	private final Area[] areas;

	/** What is done in one; it may be done again from its beginning. */
	public interface Task<T> {
		T with(Connection connection) throws SQLException, IOException, OrderException;
	}

	/** Carries what else went wrong out of a transaction, which is taken back. */
	private static final class Stopped extends Exception {
		private static final long serialVersionUID = 1L;

		Stopped(Exception cause) {
			super(cause);
		}
	}

	/** @param clock tells the time of changes */
	public Transactions(StudioFolder studio, Clock clock) {
		this(studio, clock, OrderBook.AREA);
	}

	/** Over more than the order book. @param areas all whose tables are touched, that of the order book among them */
	public Transactions(StudioFolder studio, Clock clock, Area... areas) {
		this.studio = studio;
		this.clock = clock;
		this.areas = areas.clone();
	}

	public <T> T read(Task<T> task) throws IOException, OrderException {
		try (Store store = Store.openForReading(studio, areas)) {
			return store.<T, Stopped>read(connection -> stopped(task, connection));
		} catch (Stopped e) {
			throw cause(e);
		}
	}

	/** Wholly or, if anything is thrown, not at all. */
	public <T> T change(Task<T> task) throws IOException, OrderException {
		try (Store store = Store.open(studio, areas)) {
			return store.<T, Stopped>change(connection -> stopped(task, connection));
		} catch (Stopped e) {
			throw cause(e);
		}
	}

	private static <T> T stopped(Task<T> task, Connection connection) throws SQLException, Stopped {
		try {
			return task.with(connection);
		} catch (Unreadable e) {
			throw new Stopped(new OrderException(e.getMessage(), e));
		} catch (IOException | OrderException e) {
			throw new Stopped(e);
		}
	}

	private static OrderException cause(Stopped e) throws IOException {
		if (e.getCause() instanceof IOException io) {
			throw io;
		}
		return (OrderException) e.getCause();
	}

	/** As PostgreSQL keeps it. */
	public Instant now() {
		return clock.instant().truncatedTo(ChronoUnit.MICROS);
	}
}
