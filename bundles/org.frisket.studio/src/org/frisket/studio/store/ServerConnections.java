package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.LongSupplier;

/**
 * Connections to a server; the few that were used last stay open, for to connect takes longer than to ask. A desk does one
 * thing at a time, mostly: besides the one that listens for changes it then has one open. Ten desks that are busy in all
 * their windows have forty, which a server as it is installed has room for (PostgreSQL: 100).
 */
final class ServerConnections {

	/** Makes a new one. */
	interface Source {
		Connection connect() throws SQLException;
	}

	private record Idle(Connection connection, long since) {
	}

	private static final int KEPT = 3;
	private static final long STALE_NS = 30_000_000_000L;
	/** Those that stood idle for longer are asked whether they are still there. */
	private static final long SURE_NS = 1_000_000_000L;
	private static final int ANSWER_S = 2;

	private final Source source;
	private final LongSupplier now;
	private final Deque<Idle> idle = new ArrayDeque<>();

	ServerConnections(Source source) {
		this(source, System::nanoTime);
	}

	/** @param now in ns, from any moment on */
	ServerConnections(Source source, LongSupplier now) {
		this.source = source;
		this.now = now;
	}

	Connection take() throws SQLException {
		for (Idle kept = next(); kept != null; kept = next()) {
			long age = now.getAsLong() - kept.since;
			if (age < SURE_NS || age < STALE_NS && kept.connection.isValid(ANSWER_S)) {
				return kept.connection;
			}
			end(kept.connection);
		}
		return connect();
	}

	/** One that no idle one stands in for. */
	Connection connect() throws SQLException {
		Connection connection = source.connect();
		boolean whole = false;
		try {
			connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
			whole = true;
			return connection;
		} finally {
			if (!whole) {
				end(connection);
			}
		}
	}

	private synchronized Idle next() {
		return idle.poll();
	}

	/** @param sound whether it can be used again */
	void give(Connection connection, boolean sound) {
		List<Connection> over = new ArrayList<>();
		synchronized (this) {
			long at = now.getAsLong();
			if (sound) {
				idle.push(new Idle(connection, at));
			} else {
				over.add(connection);
			}
			// those at the end were needed once, when much was asked for at the same time
			while (idle.size() > KEPT || !idle.isEmpty() && at - idle.peekLast().since > STALE_NS) {
				over.add(idle.pollLast().connection);
			}
		}
		over.forEach(ServerConnections::end);
	}

	/** Closes those that stand idle. */
	void end() {
		for (Idle kept = next(); kept != null; kept = next()) {
			end(kept.connection);
		}
	}

	static void end(Connection connection) {
		try {
			connection.close();
		} catch (SQLException gone) {
			// as it should be
		}
	}
}
