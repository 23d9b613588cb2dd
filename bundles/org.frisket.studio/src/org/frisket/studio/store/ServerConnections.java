package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayDeque;
import java.util.Deque;

/** Connections to a server; the few that were used last stay open, for to connect takes longer than to ask. */
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
	private final Deque<Idle> idle = new ArrayDeque<>();

	ServerConnections(Source source) {
		this.source = source;
	}

	Connection take() throws SQLException {
		for (Idle kept = next(); kept != null; kept = next()) {
			long age = System.nanoTime() - kept.since;
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
		connection.setTransactionIsolation(Connection.TRANSACTION_REPEATABLE_READ);
		return connection;
	}

	private synchronized Idle next() {
		return idle.poll();
	}

	/** @param sound whether it can be used again */
	void give(Connection connection, boolean sound) {
		synchronized (this) {
			if (sound && idle.size() < KEPT) {
				idle.push(new Idle(connection, System.nanoTime()));
				return;
			}
		}
		end(connection);
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
