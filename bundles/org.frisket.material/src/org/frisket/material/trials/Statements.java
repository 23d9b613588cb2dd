package org.frisket.material.trials;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Statements with parameters on one connection. Values never become part of a statement's text. */
final class Statements {

	/** What a row of an answer means. */
	@FunctionalInterface
	interface Row<T> {

		T of(ResultSet row) throws SQLException;
	}

	private final Connection connection;

	Statements(Connection connection) {
		this.connection = connection;
	}

	<T> List<T> list(String text, Row<T> meaning, Object... parameters) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(text)) {
			bind(statement, parameters);
			try (ResultSet rows = statement.executeQuery()) {
				List<T> list = new ArrayList<>();
				while (rows.next()) {
					list.add(meaning.of(rows));
				}
				return list;
			}
		}
	}

	/** A parameter that is a list stands for its members. Answers how many rows were touched. */
	int update(String text, Object... parameters) throws SQLException {
		try (PreparedStatement statement = connection.prepareStatement(text)) {
			bind(statement, parameters);
			return statement.executeUpdate();
		}
	}

	private static void bind(PreparedStatement statement, Object... parameters) throws SQLException {
		int at = 1;
		for (Object parameter : parameters) {
			for (Object value : parameter instanceof List<?> list ? list : java.util.Collections.singletonList(parameter)) {
				statement.setObject(at++, value);
			}
		}
	}
}
