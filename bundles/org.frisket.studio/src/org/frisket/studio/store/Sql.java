package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Statements with parameters; a list stands for its members, an empty optional for none. Values never become part of a
 * statement's text.
 */
public final class Sql {

	/** As many rows go to the database at once. */
	private static final int BATCH = 1000;

	/** What a row of an answer means. */
	@FunctionalInterface
	public interface Row<T> {

		T of(ResultSet row) throws SQLException;
	}

	private Sql() {
	}

	/** All rows, in the order the statement asks for. */
	public static <T> List<T> list(Connection connection, String sql, Row<T> row, Object... parameters)
			throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(sql)) {
			bind(statement, parameters);
			try (ResultSet rows = statement.executeQuery()) {
				List<T> list = new ArrayList<>();
				while (rows.next()) {
					list.add(row.of(rows));
				}
				return list;
			}
		}
	}

	/** The first row, if there is one. */
	public static <T> Optional<T> first(Connection connection, String sql, Row<T> row, Object... parameters)
			throws SQLException {
		return list(connection, sql, row, parameters).stream().findFirst();
	}

	/** Answers how many rows were touched. */
	public static int update(Connection connection, String sql, Object... parameters) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(sql)) {
			bind(statement, parameters);
			return statement.executeUpdate();
		}
	}

	/** The same statement once for each set of parameters. */
	public static void updateAll(Connection connection, String sql, Iterable<Object[]> sets) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(sql)) {
			int waiting = 0;
			for (Object[] parameters : sets) {
				bind(statement, parameters);
				statement.addBatch();
				if (++waiting == BATCH) {
					statement.executeBatch();
					waiting = 0;
				}
			}
			if (waiting > 0) {
				statement.executeBatch();
			}
		}
	}

	private static void bind(PreparedStatement statement, Object... parameters) throws SQLException {
		int place = 1;
		for (Object parameter : parameters) {
			if (parameter instanceof List<?> members) {
				for (Object member : members) {
					bind(statement, place++, member);
				}
			} else {
				bind(statement, place++, parameter);
			}
		}
	}

	private static void bind(PreparedStatement statement, int place, Object parameter) throws SQLException {
		Object value = parameter instanceof Optional<?> optional ? optional.orElse(null) : parameter;
		if (value instanceof String text) {
			KeepableText.check(text);
		}
		statement.setObject(place, value instanceof Enum<?> constant ? constant.name() : value);
	}
}
