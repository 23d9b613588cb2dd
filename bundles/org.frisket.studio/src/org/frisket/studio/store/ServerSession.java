package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Transactions on a server. Each sees the state at its beginning (repeatable read); one that another desk's change came
 * between begins again, and so does one whose connection is lost, unless the server says afterwards that it was kept.
 */
final class ServerSession implements Session {

	private static final int MOST_CONFLICTS = 20;
	/** A key that is taken whenever the work has seen what there is will stay so. */
	private static final int MOST_TAKEN = 8;
	private static final long LOST_PAUSE_MS = 200;
	/** As much longer is waited after each conflict, at most, so that desks do not get into each other's way again. */
	private static final int CONFLICT_PAUSE_MS = 4;
	/** For as long as the server is asked whether a change was kept. */
	private static final Duration SURENESS = Duration.ofSeconds(20);

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
				boolean lost = ServerReasons.isLost(e);
				if (attempt.keeping && (ServerReasons.isUnheard(e) || lost && isKept(attempt.mark, e))) {
					revision.change();
					return attempt.result;
				}
				boolean conflict = ServerReasons.isConflict(e)
						&& ++conflicts <= (ServerReasons.isTaken(e) ? MOST_TAKEN : MOST_CONFLICTS);
				boolean again = conflict && pause(ThreadLocalRandom.current().nextInt(CONFLICT_PAUSE_MS * conflicts))
						|| lost && System.nanoTime() < end && pause(LOST_PAUSE_MS);
				if (!again) {
					throw new StoreException(place, ServerReasons.of(e), e);
				}
			}
		}
	}

	/**
	 * Asks the server until it answers.
	 *
	 * @throws StoreException if it does not
	 */
	private boolean isKept(String mark, SQLException lost) throws StoreException {
		long end = System.nanoTime() + SURENESS.toNanos();
		do {
			try {
				Connection connection = connections.connect();
				try {
					Optional<Boolean> kept = ServerMarks.isKept(connection, mark, Duration.ofNanos(end - System.nanoTime()));
					if (kept.isPresent()) {
						if (kept.get()) {
							ServerRevision.tell(connection);
						}
						return kept.get();
					}
				} finally {
					ServerConnections.end(connection);
				}
			} catch (SQLException notYet) {
				if (!ServerReasons.isLost(notYet)) {
					lost.addSuppressed(notYet);
					break;
				}
			}
		} while (System.nanoTime() < end && pause(LOST_PAUSE_MS));
		throw new StoreException(place, Messages.Server_unsure, lost);
	}

	private static boolean pause(long ms) {
		try {
			Thread.sleep(ms);
			return true;
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return false;
		}
	}

	private final class Attempt<T, X extends Exception> {

		private final Work<T, X> work;
		private final boolean keep;
		private final String mark = UUID.randomUUID().toString();
		private T result;
		/** Once that has begun only the server knows what came of it if the connection is lost. */
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
				result = work.on(connection);
				if (keep) {
					keeping = true;
					ServerMarks.keep(connection, mark);
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
