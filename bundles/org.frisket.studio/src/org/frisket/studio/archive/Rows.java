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
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;

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

	/**
	 * @param table a name of ours, not one from outside
	 * @throws OperationCanceledException if it is called off
	 */
	static void write(Connection connection, String table, Writer out, IProgressMonitor monitor)
			throws SQLException, IOException {
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
				for (long count = 1; rows.next(); count++) {
					goOn(monitor, count);
					JsonArray row = new JsonArray();
					for (int c = 1; c <= names.size(); c++) {
						row.add(text(rows, c, columns.getColumnType(c)));
					}
					out.append(gson.toJson(row)).append('\n');
				}
			}
		}
	}

	/** Asks now and then. */
	private static void goOn(IProgressMonitor monitor, long count) {
		if (count % BATCH == 0 && monitor.isCanceled()) {
			throw new OperationCanceledException();
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
	 * @throws IOException                if a line is not what {@link #write} writes; the message says which
	 * @throws OperationCanceledException if it is called off
	 */
	static long read(BufferedReader in, Connection connection, String table, IProgressMonitor monitor)
			throws SQLException, IOException {
		List<String> names = head(in);
		int[] types = types(connection, table, names);
		String sql = "INSERT INTO " + table + " (" + String.join(", ", names) + ") VALUES ("
				+ String.join(", ", Collections.nCopies(names.size(), "?")) + ")";
		long count = 0;
		try (PreparedStatement insert = connection.prepareStatement(sql)) {
			for (String text = in.readLine(); text != null; text = in.readLine()) {
				count++;
				goOn(monitor, count);
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

	private static List<String> head(BufferedReader in) throws IOException {
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
		return names;
	}

	/** How many there are, and when one was changed last. @throws IOException if a line is damaged; the message says which */
	static ArchiveContents.Tally tally(BufferedReader in) throws IOException {
		int changed = head(in).indexOf(ArchiveContents.CHANGED);
		long count = 0;
		Optional<Instant> latest = Optional.empty();
		for (String text = in.readLine(); text != null; text = in.readLine()) {
			count++;
			if (changed >= 0) {
				Instant at = at(array(text, count + 1), changed, count + 1);
				latest = Optional.of(latest.filter(at::isBefore).orElse(at));
			}
		}
		return new ArchiveContents.Tally(count, latest);
	}

	private static Instant at(JsonArray row, int column, long number) throws IOException {
		try {
			return OffsetDateTime.parse(row.get(column).getAsString()).toInstant();
		} catch (DateTimeParseException | IndexOutOfBoundsException | UnsupportedOperationException
				| IllegalStateException e) {
			throw line(number);
		}
	}

	/** @param table a name of ours */
	static boolean hasColumn(Connection connection, String table, String column) throws SQLException {
		try (Statement statement = connection.createStatement();
				ResultSet none = statement.executeQuery("SELECT * FROM " + table + " WHERE 1 = 0")) {
			ResultSetMetaData columns = none.getMetaData();
			for (int c = 1; c <= columns.getColumnCount(); c++) {
				if (columns.getColumnName(c).equalsIgnoreCase(column)) {
					return true;
				}
			}
			return false;
		}
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
