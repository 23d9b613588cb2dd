package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookState;
import org.frisket.studio.store.Sql;

/** Jobs as rows. */
public final class JobRows {

	private static final String SELECT = "SELECT j.id, j.number, j.revision, j.title, c.name, j.stage, j.stage_since, "
			+ "j.due, j.quantity, j.stock, j.words, j.changed, j.changed_by FROM orders_job j "
			+ "LEFT JOIN orders_customer c ON c.id = j.customer ";

	private JobRows() {
	}

	/** The latest numbers first. @param most how many at most */
	public static List<Entry> list(Connection connection, long most) throws SQLException {
		return Sql.list(connection, SELECT + "ORDER BY j.number DESC FETCH FIRST ? ROWS ONLY", JobRows::entry, most);
	}

	/** Those that stand at one of these stages, by number. */
	public static List<Entry> atStages(Connection connection, List<Stage> stages) throws SQLException {
		return Sql.list(connection, SELECT + "WHERE j.stage IN (" + "?, ".repeat(stages.size() - 1) + "?) ORDER BY j.number",
				JobRows::entry, stages);
	}

	/** What was changed at a time or later. */
	public static List<Entry> changedSince(Connection connection, Instant since) throws SQLException {
		return Sql.list(connection, SELECT + "WHERE j.changed >= ? ORDER BY j.number DESC", JobRows::entry, time(since));
	}

	/** The latest numbers first. @param customer its id */
	public static List<Entry> ofCustomer(Connection connection, String customer) throws SQLException {
		return Sql.list(connection, SELECT + "WHERE j.customer = ? ORDER BY j.number DESC", JobRows::entry, customer);
	}

	public static Optional<Entry> find(Connection connection, long number) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE j.number = ?", JobRows::entry, number);
	}

	public static Optional<Entry> find(Connection connection, String id) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE j.id = ?", JobRows::entry, id);
	}

	/** What all jobs come to. */
	public static BookState state(Connection connection) throws SQLException {
		Map<Stage, BookState.Tally> tallies = new EnumMap<>(Stage.class);
		Sql.list(connection, "SELECT stage, COUNT(*), SUM(revision), MAX(changed) FROM orders_job GROUP BY stage",
				row -> tallies.put(Stage.valueOf(row.getString(1)),
						new BookState.Tally(row.getLong(2), row.getLong(3), instant(row, 4))));
		return new BookState(tallies);
	}

	private static Entry entry(ResultSet row) throws SQLException {
		String customer = row.getString(5);
		return new Entry(row.getString(1), row.getLong(2), row.getLong(3), row.getString(4),
				customer == null ? "" : customer, Stage.valueOf(row.getString(6)), instant(row, 7),
				Optional.ofNullable(row.getObject(8, LocalDate.class)), row.getInt(9), row.getString(10), row.getString(11),
				instant(row, 12), row.getString(13));
	}

	static Instant instant(ResultSet row, int column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	static OffsetDateTime time(Instant at) {
		return at.atOffset(ZoneOffset.UTC);
	}

	/** The next number; whoever asks at the same time gets another. */
	public static long nextNumber(Connection connection) throws SQLException {
		Sql.update(connection, "UPDATE orders_counter SET last_number = last_number + 1");
		return Sql.first(connection, "SELECT last_number FROM orders_counter", row -> row.getLong(1)).orElseThrow();
	}

	public static void insert(Connection connection, Entry entry, Optional<String> customer) throws SQLException {
		Sql.update(connection,
				"INSERT INTO orders_job (id, number, revision, title, customer, stage, stage_since, due, quantity, stock, "
						+ "words, created, changed, changed_by) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
				entry.id(), entry.number(), entry.revision(), entry.title(), customer, entry.stage(), time(entry.since()),
				entry.due(), entry.quantity(), entry.stock(), entry.words(), time(entry.changed()), time(entry.changed()),
				entry.changedBy());
	}

	/** What a document says of a job, with a revision more. @return whether the revision was still the one given */
	public static boolean update(Connection connection, Entry entry, Optional<String> customer, long revision)
			throws SQLException {
		return Sql.update(connection,
				"UPDATE orders_job SET revision = revision + 1, title = ?, customer = ?, due = ?, quantity = ?, stock = ?, "
						+ "words = ?, changed = ?, changed_by = ? WHERE id = ? AND revision = ?",
				entry.title(), customer, entry.due(), entry.quantity(), entry.stock(), entry.words(), time(entry.changed()),
				entry.changedBy(), entry.id(), revision) == 1;
	}

	/** Another stage, from now on. */
	public static void stage(Connection connection, String id, Stage stage, Instant at, String person) throws SQLException {
		Sql.update(connection, "UPDATE orders_job SET stage = ?, stage_since = ?, changed = ?, changed_by = ? WHERE id = ?",
				stage, time(at), time(at), person, id);
	}
}
