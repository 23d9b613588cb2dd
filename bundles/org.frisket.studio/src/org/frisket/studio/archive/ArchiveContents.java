package org.frisket.studio.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.studio.store.Sql;

/**
 * What a studio's tables have in them, or a backup of them.
 *
 * @param rows    how many, by table
 * @param changed when one of them was changed last, by table; only of tables that say so and have rows
 */
public record ArchiveContents(Map<String, Long> rows, Map<String, Instant> changed) {

	/** The column of those tables that say when a row was changed. */
	static final String CHANGED = "changed";

	public ArchiveContents {
		rows = Map.copyOf(rows);
		changed = Map.copyOf(changed);
	}

	/** How many rows a table has; none if there is no such table. */
	public long rows(String table) {
		return rows.getOrDefault(table, 0L);
	}

	public Optional<Instant> changed(String table) {
		return Optional.ofNullable(changed.get(table));
	}

	/** Whether there is no more in them than in those of a new studio: a counter begins with one row. */
	public boolean isNew() {
		return rows.entrySet().stream()
				.allMatch(each -> each.getValue() == 0 || each.getValue() == 1 && each.getKey().endsWith("_counter"));
	}

	/** A table's, or an archive's of it. */
	interface Source {
		Optional<Tally> of(String table) throws SQLException, IOException;
	}

	/** Of one table. */
	record Tally(long rows, Optional<Instant> changed) {
	}

	static ArchiveContents of(List<String> tables, Source source) throws SQLException, IOException {
		Map<String, Long> rows = new LinkedHashMap<>();
		Map<String, Instant> changed = new LinkedHashMap<>();
		for (String table : tables) {
			Optional<Tally> tally = source.of(table);
			rows.put(table, tally.map(Tally::rows).orElse(0L));
			tally.flatMap(Tally::changed).ifPresent(at -> changed.put(table, at));
		}
		return new ArchiveContents(rows, changed);
	}

	/** @param table a name of ours, not one from outside */
	static Tally now(Connection connection, String table) throws SQLException {
		long rows = Sql.first(connection, "SELECT COUNT(*) FROM " + table, row -> row.getLong(1)).orElse(0L);
		Optional<Instant> changed = rows > 0 && Rows.hasColumn(connection, table, CHANGED)
				? Sql.first(connection, "SELECT MAX(" + CHANGED + ") FROM " + table,
						row -> row.getObject(1, OffsetDateTime.class).toInstant())
				: Optional.empty();
		return new Tally(rows, changed);
	}
}
