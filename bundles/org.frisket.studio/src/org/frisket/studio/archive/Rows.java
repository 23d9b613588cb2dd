package org.frisket.studio.archive;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.sql.Types;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;

/**
 * A table as lines: the names of its columns, then a JSON array for each row, in the order of the first columns. Numbers
 * and times are texts that lose nothing; it is the same for every database.
 */
final class Rows {

	private static final int BATCH = 500;

	private Rows() {
	}

	/** @param table a name of ours, not one from outside */
	static void write(Connection connection, String table, Writer out) throws SQLException, IOException {
		Gson gson = new Gson();
		try (Statement statement = connection.createStatement()) {
			statement.setFetchSize(BATCH);
			try (ResultSet rows = statement.executeQuery("SELECT * FROM " + table + " ORDER BY " + key(connection, table))) {
				ResultSetMetaData columns = rows.getMetaData();
				JsonArray names = new JsonArray();
				for (int c = 1; c <= columns.getColumnCount(); c++) {
					names.add(columns.getColumnName(c).toLowerCase(java.util.Locale.ROOT));
				}
				out.append(gson.toJson(names)).append('\n');
				while (rows.next()) {
					JsonArray row = new JsonArray();
					for (int c = 1; c <= names.size(); c++) {
						row.add(text(rows, c, columns.getColumnType(c)));
					}
					out.append(gson.toJson(row)).append('\n');
				}
			}
		}
	}

	/** Keys are the first column, or the first two. */
	private static String key(Connection connection, String table) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet none = statement.executeQuery("SELECT * FROM " + table + " WHERE 1 = 0")) {
			return none.getMetaData().getColumnCount() == 1 ? "1" : "1, 2";
		}
	}

	private static JsonPrimitive text(ResultSet rows, int column, int type) throws SQLException {
		Object value = switch (type) {
		case Types.TIMESTAMP_WITH_TIMEZONE, Types.TIMESTAMP -> rows.getObject(column, OffsetDateTime.class);
		case Types.DATE -> rows.getObject(column, LocalDate.class);
		case Types.DOUBLE, Types.FLOAT, Types.REAL -> rows.getObject(column, Double.class);
		case Types.NUMERIC, Types.DECIMAL -> rows.getBigDecimal(column);
		default -> rows.getObject(column);
		};
		if (value == null) {
			return null;
		}
		return new JsonPrimitive(value instanceof BigDecimal decimal ? decimal.toPlainString()
				: value instanceof OffsetDateTime at ? at.withOffsetSameInstant(ZoneOffset.UTC).toString() : value.toString());
	}

	/**
	 * @param table a name of ours
	 * @return how many rows were put in
	 * @throws IOException if a line is not what {@link #write} writes; the message says which
	 */
	static long read(BufferedReader in, Connection connection, String table) throws SQLException, IOException {
		String head = in.readLine();
		List<String> names = new ArrayList<>();
		for (JsonElement name : array(head == null ? "" : head, 1)) {
			String text = name.isJsonPrimitive() ? name.getAsString() : "";
			// it becomes part of a statement
			if (!text.matches("[a-z][a-z_]{0,62}")) {
				throw line(1);
			}
			names.add(text);
		}
		if (names.isEmpty()) {
			throw line(1);
		}
		int[] types = types(connection, table, names);
		String sql = "INSERT INTO " + table + " (" + String.join(", ", names) + ") VALUES ("
				+ String.join(", ", Collections.nCopies(names.size(), "?")) + ")";
		long count = 0;
		try (PreparedStatement insert = connection.prepareStatement(sql)) {
			for (String text = in.readLine(); text != null; text = in.readLine()) {
				count++;
				JsonArray row = array(text, count + 1);
				if (row.size() != names.size()) {
					throw line(count + 1);
				}
				try {
					for (int c = 0; c < types.length; c++) {
						insert.setObject(c + 1, row.get(c).isJsonNull() ? null : value(row.get(c).getAsString(), types[c]));
					}
				} catch (IllegalArgumentException | DateTimeParseException | UnsupportedOperationException
						| IllegalStateException e) {
					throw line(count + 1);
				}
				insert.addBatch();
				if (count % BATCH == 0) {
					insert.executeBatch();
				}
			}
			insert.executeBatch();
		}
		return count;
	}

	private static int[] types(Connection connection, String table, List<String> names) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet none = statement
						.executeQuery("SELECT " + String.join(", ", names) + " FROM " + table + " WHERE 1 = 0")) {
			int[] types = new int[names.size()];
			for (int c = 0; c < types.length; c++) {
				types[c] = none.getMetaData().getColumnType(c + 1);
			}
			return types;
		}
	}

	private static Object value(String text, int type) {
		return switch (type) {
		case Types.TIMESTAMP_WITH_TIMEZONE, Types.TIMESTAMP -> OffsetDateTime.parse(text);
		case Types.DATE -> LocalDate.parse(text);
		case Types.DOUBLE, Types.FLOAT, Types.REAL -> Double.valueOf(text);
		case Types.NUMERIC, Types.DECIMAL -> new BigDecimal(text);
		case Types.INTEGER, Types.SMALLINT, Types.TINYINT -> Integer.valueOf(text);
		case Types.BIGINT -> Long.valueOf(text);
		case Types.BOOLEAN, Types.BIT -> Boolean.valueOf(text);
		default -> text;
		};
	}

	private static JsonArray array(String text, long number) throws IOException {
		try {
			return JsonParser.parseString(text).getAsJsonArray();
		} catch (JsonParseException | IllegalStateException e) {
			throw line(number);
		}
	}

	private static IOException line(long number) {
		return new IOException(org.eclipse.osgi.util.NLS.bind(Messages.Rows_line, number));
	}
}
