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
import java.util.stream.Stream;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.desk.BookState;
import org.frisket.studio.store.Sql;

/**
 * Jobs as rows. A row that cannot be read spoils no list of many jobs, it is missing there; whoever asks for that job, or
 * for what must be complete, is told by {@link Unreadable}.
 */
public final class JobRows {

	private static final String SELECT = "SELECT j.id, j.number, j.revision, j.title, c.name, j.stage, j.stage_since, "
			+ "j.due, j.quantity, j.stock, j.words, j.changed, j.changed_by FROM orders_job j "
			+ "LEFT JOIN orders_customer c ON c.id = j.customer ";

	static final String STAGE = "UPDATE orders_job SET stage = ?, stage_since = ?, changed = ?, changed_by = ? WHERE id = ?";

	private static final List<String> STAGES = Stream.of(Stage.values()).map(Stage::name).toList();

	private JobRows() {
	}

	/** The latest numbers first. @param most how many at most */
	public static List<Entry> list(Connection connection, long most) throws SQLException {
		return readable(connection, "ORDER BY j.number DESC FETCH FIRST ? ROWS ONLY", most);
	}

	/** Those that stand at one of these stages, by number. */
	public static List<Entry> atStages(Connection connection, List<Stage> stages) throws SQLException {
		return readable(connection, "WHERE j.stage IN (" + "?, ".repeat(stages.size() - 1) + "?) ORDER BY j.number", stages);
	}

	/** What was changed at a time or later. */
	public static List<Entry> changedSince(Connection connection, Instant since) throws SQLException {
		return readable(connection, "WHERE j.changed >= ? ORDER BY j.number DESC", time(since));
	}

	private static List<Entry> readable(Connection connection, String which, Object... parameters) throws SQLException {
		return Sql.list(connection, SELECT + which, JobRows::ifReadable, parameters).stream().flatMap(Optional::stream).toList();
	}

	private static Optional<Entry> ifReadable(ResultSet row) throws SQLException {
		return isReadable(row.getString(6)) ? Optional.of(entry(row)) : Optional.empty();
	}

	private static boolean isReadable(String stage) {
		return STAGES.contains(stage);
	}

	/** The numbers of those that cannot be read, the latest first. */
	public static List<Long> unreadable(Connection connection) throws SQLException {
		return Sql.list(connection, "SELECT number FROM orders_job WHERE stage NOT IN (" + "?, ".repeat(STAGES.size() - 1)
				+ "?) ORDER BY number DESC", row -> row.getLong(1), STAGES);
	}

	/** The latest numbers first; all of them. @param customer its id */
	public static List<Entry> ofCustomer(Connection connection, String customer) throws SQLException {
		return Sql.list(connection, SELECT + "WHERE j.customer = ? ORDER BY j.number DESC", JobRows::entry, customer);
	}

	public static Optional<Entry> find(Connection connection, long number) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE j.number = ?", JobRows::entry, number);
	}

	public static Optional<Entry> find(Connection connection, String id) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE j.id = ?", JobRows::entry, id);
	}

	/** What all jobs come to that can be read. */
	public static BookState state(Connection connection) throws SQLException {
		Map<Stage, BookState.Tally> tallies = new EnumMap<>(Stage.class);
		Sql.list(connection, "SELECT stage, COUNT(*), SUM(revision), MAX(changed) FROM orders_job GROUP BY stage",
				row -> isReadable(row.getString(1)) ? tallies.put(Stage.valueOf(row.getString(1)),
						new BookState.Tally(row.getLong(2), row.getLong(3), instant(row, 4))) : null);
		return new BookState(tallies);
	}

	private static Entry entry(ResultSet row) throws SQLException {
		String customer = row.getString(5);
		return new Entry(row.getString(1), row.getLong(2), row.getLong(3), row.getString(4),
				customer == null ? "" : customer, Unreadable.value(Stage.class, row.getString(6), row.getLong(2)), instant(row, 7),
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
		return nextNumbers(connection, 1);
	}

	/** The first of the next numbers. @param count how many are taken */
	static long nextNumbers(Connection connection, int count) throws SQLException {
		Sql.update(connection, "UPDATE orders_counter SET last_number = last_number + ?", count);
		return Sql.first(connection, "SELECT last_number FROM orders_counter", row -> row.getLong(1)).orElseThrow() - count + 1;
	}

	public static void insert(Connection connection, Entry entry, Optional<String> customer) throws SQLException {
		insertAll(connection, List.<Object[]>of(values(entry, customer)));
	}

	/** @param rows of {@link #values} */
	static void insertAll(Connection connection, List<Object[]> rows) throws SQLException {
		Sql.updateAll(connection, "INSERT INTO orders_job (id, number, revision, title, customer, stage, stage_since, due, "
				+ "quantity, stock, words, created, changed, changed_by) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", rows);
	}

	static Object[] values(Entry entry, Optional<String> customer) {
		return new Object[] { entry.id(), entry.number(), entry.revision(), entry.title(), customer, entry.stage(),
				time(entry.since()), entry.due(), entry.quantity(), entry.stock(), entry.words(), time(entry.changed()),
				time(entry.changed()), entry.changedBy() };
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
		Sql.update(connection, STAGE, stage, time(at), time(at), person, id);
	}
}
