package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Optional;

/**
 * Tells whether a change on a server was kept when its connection was lost while it was: every change leaves a mark that
 * was drawn by lot, in its own transaction. The number of the transaction would not do, for a server that broke down may
 * give it again.
 */
final class ServerMarks {

	private static final String TABLE = """
			CREATE TABLE IF NOT EXISTS store_change (
				mark VARCHAR(36) NOT NULL PRIMARY KEY,
				made TIMESTAMP WITH TIME ZONE NOT NULL)""";
	/**
	 * In one with the end of the transaction and the notice to others, so that all go one way to the server. The notice comes
	 * last: within the transaction it would let only one desk at a time wait for the disc.
	 */
	private static final String KEEP = "INSERT INTO store_change (mark, made) VALUES (?, CURRENT_TIMESTAMP); COMMIT; "
			+ ServerRevision.NOTIFY;
	private static final String TAKEN = "23505";
	private static final String WAITED_TOO_LONG = "55P03";

	private ServerMarks() {
	}

	static boolean isReady(Connection connection) throws SQLException {
		return Sql.first(connection, "SELECT to_regclass('store_change') IS NOT NULL", row -> row.getBoolean(1)).orElse(false);
	}

	static void make(Connection connection) throws SQLException {
		try (Statement statement = connection.createStatement()) {
			statement.execute(TABLE);
		}
	}

	/** Forgets marks that nobody can ask for any more. */
	static void clear(Connection connection) throws SQLException {
		try {
			Sql.update(connection, "DELETE FROM store_change WHERE made < CURRENT_TIMESTAMP - INTERVAL '1' DAY");
		} catch (SQLException e) {
			if (!ServerReasons.isConflict(e) && !ServerReasons.isForbidden(e)) {
				throw e;
			}
			// another desk forgets them just now, or this one may only look
		}
	}

	/**
	 * Keeps a change with its mark, which ends the transaction, and tells others of it. The server leaves out what comes after
	 * a step that failed, so that nothing is kept without its mark.
	 */
	static void keep(Connection connection, String mark) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(KEEP)) {
			statement.setString(1, mark);
			statement.execute();
		}
	}

	/**
	 * Whether the change with a mark was kept. One that the server is still at is waited for: the same mark cannot be set
	 * before it is known what becomes of the first.
	 *
	 * @return empty if the server was still at it when patience was at its end
	 */
	static Optional<Boolean> isKept(Connection connection, String mark, Duration patience) throws SQLException {
		connection.setAutoCommit(false);
		connection.setReadOnly(false);
		try (Statement statement = connection.createStatement()) {
			statement.execute("SET LOCAL lock_timeout = " + Math.max(1, patience.toMillis()));
			Sql.update(connection, "INSERT INTO store_change (mark, made) VALUES (?, CURRENT_TIMESTAMP)", mark);
			return Optional.of(false);
		} catch (SQLException e) {
			if (TAKEN.equals(e.getSQLState())) {
				return Optional.of(true);
			}
			if (WAITED_TOO_LONG.equals(e.getSQLState())) {
				return Optional.empty();
			}
			throw e;
		} finally {
			connection.rollback();
		}
	}
}
