package org.frisket.studio.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;

/** What a store has been through, area by area, and what is still to come. Knows no particular database. */
final class Versions {

	private static final String TABLE = """
			CREATE TABLE store_version (
				area VARCHAR(32) NOT NULL,
				number INTEGER NOT NULL,
				name VARCHAR(200) NOT NULL,
				applied TIMESTAMP WITH TIME ZONE NOT NULL,
				PRIMARY KEY (area, number))""";

	/** What an exception of the database means, in plain words. */
	interface Reasons {
		String of(SQLException e);
	}

	private final Object place;
	private final Reasons reasons;

	/** @param place what messages call the store */
	Versions(Object place, Reasons reasons) {
		this.place = place;
		this.reasons = reasons;
	}

	/** @throws StoreException if an area comes from a newer program */
	List<Migration> pending(Connection connection, Collection<Area> areas) throws SQLException, IOException {
		boolean fresh = isFresh(connection);
		List<Migration> pending = new ArrayList<>();
		for (Area area : areas) {
			Set<Integer> applied = fresh ? Set.of() : applied(connection, area);
			List<Migration> migrations = area.migrations();
			Set<Integer> unknown = new TreeSet<>(applied);
			unknown.removeAll(migrations.stream().map(Migration::number).collect(Collectors.toSet()));
			if (!unknown.isEmpty()) {
				throw new StoreException(place, NLS.bind(Messages.Store_newer,
						"%s %03d".formatted(area.name(), unknown.iterator().next())));
			}
			migrations.stream().filter(migration -> !applied.contains(migration.number())).forEach(pending::add);
		}
		return pending;
	}

	private static boolean isFresh(Connection connection) throws SQLException {
		return Sql.first(connection,
				"SELECT table_name FROM information_schema.tables WHERE LOWER(table_name) = 'store_version' AND table_schema = CURRENT_SCHEMA",
				row -> row.getString(1)).isEmpty();
	}

	private static Set<Integer> applied(Connection connection, Area area) throws SQLException {
		return new TreeSet<>(Sql.list(connection, "SELECT number FROM store_version WHERE area = ?",
				row -> row.getInt(1), area.name()));
	}

	/**
	 * Takes a store through migrations, each in a transaction of its own. A database that cannot take back the making of
	 * a table is to be given as a copy.
	 */
	void apply(Connection connection, List<Migration> migrations) throws SQLException, StoreException {
		connection.setAutoCommit(false);
		if (isFresh(connection)) {
			execute(connection, TABLE);
		}
		for (Migration migration : migrations) {
			try {
				execute(connection, migration.sql());
				Sql.update(connection, "INSERT INTO store_version (area, number, name, applied) VALUES (?, ?, ?, ?)",
						migration.area().name(), migration.number(), migration.name(), now());
				connection.commit();
			} catch (SQLException e) {
				connection.rollback();
				throw new StoreException(place, NLS.bind(Messages.Store_migration, migration.title(), reasons.of(e)), e);
			}
		}
		connection.commit();
		connection.setAutoCommit(true);
	}

	private static OffsetDateTime now() {
		return OffsetDateTime.now(ZoneOffset.UTC).truncatedTo(ChronoUnit.SECONDS);
	}

	private static void execute(Connection connection, String script) throws SQLException {
		try (Statement statement = connection.createStatement()) {
			statement.execute(script);
		}
	}
}
