package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.UUID;

/**
 * How many changes a file has kept. It counts them itself, each in its own transaction, so that one whose end was lost says
 * fewer than were kept.
 *
 * @param file drawn by lot when the counting began: the number of another file means nothing for this one
 */
record ChangeCount(String file, long changes) {

	private static final String TABLE = """
			CREATE TABLE store_count (
				file VARCHAR(36) NOT NULL PRIMARY KEY,
				changes BIGINT NOT NULL)""";

	/** Begins to count, if that has not begun. */
	static void make(Connection connection) throws SQLException {
		if (of(connection).isEmpty()) {
			try (Statement statement = connection.createStatement()) {
				statement.execute(TABLE);
			}
			Sql.update(connection, "INSERT INTO store_count (file, changes) VALUES (?, 0)", UUID.randomUUID().toString());
		}
	}

	/** Empty if nothing was counted yet. */
	static Optional<ChangeCount> of(Connection connection) throws SQLException {
		try {
			return Optional.of(read(connection));
		} catch (SQLException e) {
			if (H2File.lacksTable(e)) {
				return Optional.empty();
			}
			throw e;
		}
	}

	/** As the last step of a change, before it is kept. */
	static ChangeCount add(Connection connection) throws SQLException {
		Sql.update(connection, "UPDATE store_count SET changes = changes + 1");
		return read(connection);
	}

	private static ChangeCount read(Connection connection) throws SQLException {
		return Sql.first(connection, "SELECT file, changes FROM store_count",
				row -> new ChangeCount(row.getString(1), row.getLong(2)))
				.orElseThrow(() -> new SQLException("store_count is empty"));
	}

	/** Whether changes that were counted are missing in a file. @param there what the file says of itself */
	boolean isAheadOf(Optional<ChangeCount> there) {
		return there.isEmpty() || there.get().file().equals(file) && there.get().changes() < changes;
	}
}
