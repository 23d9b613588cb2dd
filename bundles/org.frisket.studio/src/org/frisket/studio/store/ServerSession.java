package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;

/**
 * Transactions on a server. Each sees the state at its beginning (repeatable read); one that another desk's change came
 * between begins again, and so does one whose connection is lost before anything could be kept.
 */
final class ServerSession implements Session {

	private static final int MOST_CONFLICTS = 20;
	/** A key that is still taken when the work has seen it will stay so. */
	private static final int MOST_TAKEN = 2;
	private static final long LOST_PAUSE_MS = 200;

	private final String place;
	private final ServerConnections connections;
	private final ServerRevision revision;
	private final Duration patience;

	ServerSession(String place, ServerConnections connections, ServerRevision revision, Duration patience) {
		this.place = place;
		this.connections = connections;
		this.revision = revision;
		this.patience = patience;
	}

	@Override
	public <T, X extends Exception> T transaction(Work<T, X> work, boolean keep) throws StoreException, X {
		long end = System.nanoTime() + patience.toNanos();
		for (int conflicts = 0;;) {
			Attempt<T, X> attempt = new Attempt<>(work, keep);
			try {
				return attempt.run();
			} catch (SQLException e) {
				boolean conflict = ServerReasons.isConflict(e)
						&& ++conflicts <= (ServerReasons.isTaken(e) ? MOST_TAKEN : MOST_CONFLICTS);
				boolean lost = ServerReasons.isLost(e) && !attempt.keeping && System.nanoTime() < end && pause();
				if (!conflict && !lost) {
					throw new StoreException(place,
							attempt.keeping && ServerReasons.isLost(e) ? Messages.Server_unsure : ServerReasons.of(e), e);
				}
			}
		}
	}

	private static boolean pause() {
		try {
			Thread.sleep(LOST_PAUSE_MS);
			return true;
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return false;
		}
	}

	private final class Attempt<T, X extends Exception> {

		private final Work<T, X> work;
		private final boolean keep;
		/** Once that has begun nobody knows what came of it if the connection is lost. */
		private boolean keeping;

		Attempt(Work<T, X> work, boolean keep) {
			this.work = work;
			this.keep = keep;
		}

		T run() throws SQLException, X {
			Connection connection = connections.take();
			boolean sound = false;
			try {
				connection.setAutoCommit(false);
				connection.setReadOnly(!keep);
				T result = work.on(connection);
				if (keep) {
					try (Statement statement = connection.createStatement()) {
						statement.execute(ServerRevision.NOTIFY);
					}
					keeping = true;
					connection.commit();
					keeping = false;
					revision.change();
				} else {
					connection.rollback();
				}
				sound = true;
				return result;
			} finally {
				connections.give(connection, sound || takenBack(connection));
			}
		}
	}

	private static boolean takenBack(Connection connection) {
		try {
			connection.rollback();
			return true;
		} catch (SQLException lost) {
			return false;
		}
	}

	@Override
	public void close() {
		// connections are given back after each transaction
	}
}
