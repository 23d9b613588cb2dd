package org.frisket.orders.work.internal;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

import org.frisket.orders.work.PlannedRun;
import org.frisket.orders.work.RunPiece;
import org.frisket.orders.work.RunSheet;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Step;
import org.frisket.studio.store.Sql;

/** Runs as rows. */
public final class RunRows {

	private static final String SELECT = "SELECT r.number, j.number, j.title, r.planned_at, r.planned_by, r.seconds "
			+ "FROM work_run r JOIN orders_job j ON j.id = r.job ";
	/** Runs nothing more is to come of. */
	private static final String OVER = "SELECT m.run FROM work_mark m WHERE m.step = 'CUT' GROUP BY m.run "
			+ "HAVING SUM(m.closes) > 0";

	private record Head(long number, long job, String title, Instant at, String by, BigDecimal seconds) {
	}

	/** @param closes below zero where it was taken back */
	private record Said(Step step, BigDecimal seconds, int closes) {
	}

	private record Amount(StockColour of, BigDecimal amount) {
	}

	private RunRows() {
	}

	/** The next number; whoever asks at the same time gets another. */
	public static long nextNumber(Connection connection) throws SQLException {
		Sql.update(connection, "UPDATE work_counter SET last_number = last_number + 1");
		return Sql.first(connection, "SELECT last_number FROM work_counter", row -> row.getLong(1)).orElseThrow();
	}

	/** @param job the id of the job that holds the layout */
	public static void insert(Connection connection, long number, String job, Instant at, String by, BigDecimal seconds,
			List<RunPiece> pieces, List<RunSheet> sheets) throws SQLException {
		Sql.update(connection, "INSERT INTO work_run (number, job, planned_at, planned_by, seconds) VALUES (?, ?, ?, ?, ?)",
				number, job, time(at), by, seconds);
		Sql.updateAll(connection,
				"INSERT INTO work_run_piece (run, job, stock, colour, pieces, printed) VALUES (?, ?, ?, ?, ?, ?)",
				pieces.stream().map(piece -> new Object[] { number, piece.job(), piece.of().stock(), piece.of().colour(),
						piece.pieces(), piece.print() }).toList());
		List<Object[]> rows = new ArrayList<>();
		for (RunSheet sheet : sheets) {
			rows.add(new Object[] { number, rows.size() + 1, sheet.of().stock(), sheet.of().colour(), sheet.leftover(),
					sheet.amount(), sheet.width(), sheet.height(), sheet.partsArea(), sheet.offcutWidth(),
					sheet.offcutHeight() });
		}
		Sql.updateAll(connection, "INSERT INTO work_run_sheet (run, place, stock, colour, leftover, amount, width, height, "
				+ "parts_area, offcut_width, offcut_height) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", rows);
	}

	public static Optional<PlannedRun> find(Connection connection, long number) throws SQLException {
		Optional<Head> head = Sql.first(connection, SELECT + "WHERE r.number = ?", RunRows::head, number);
		return head.isPresent() ? Optional.of(run(connection, head.get())) : Optional.empty();
	}

	/** By number. */
	public static List<PlannedRun> all(Connection connection) throws SQLException {
		return runs(connection, SELECT + "ORDER BY r.number");
	}

	/** Those something is still to come of, by number. */
	public static List<PlannedRun> open(Connection connection) throws SQLException {
		return runs(connection, SELECT + "WHERE r.number NOT IN (" + OVER + ") ORDER BY r.number");
	}

	/** The ids of the jobs that hold layouts of runs. */
	public static List<String> layouts(Connection connection) throws SQLException {
		return Sql.list(connection, "SELECT job FROM work_run", row -> row.getString(1));
	}

	private static List<PlannedRun> runs(Connection connection, String select) throws SQLException {
		List<PlannedRun> runs = new ArrayList<>();
		for (Head head : Sql.list(connection, select, RunRows::head)) {
			runs.add(run(connection, head));
		}
		return runs;
	}

	private static Head head(ResultSet row) throws SQLException {
		return new Head(row.getLong(1), row.getLong(2), row.getString(3), instant(row, 4), row.getString(5),
				row.getBigDecimal(6));
	}

	private static PlannedRun run(Connection connection, Head head) throws SQLException {
		List<Said> said = Sql.list(connection, "SELECT step, seconds, closes, takes_back FROM work_mark WHERE run = ?",
				row -> new Said(Step.valueOf(row.getString(1)), row.getBigDecimal(2), row.getInt(3)), head.number());
		Set<Step> closed = EnumSet.noneOf(Step.class);
		for (Step step : Step.values()) {
			if (said.stream().filter(each -> each.step() == step).mapToInt(Said::closes).sum() > 0) {
				closed.add(step);
			}
		}
		BigDecimal measured = said.stream().map(Said::seconds).filter(seconds -> seconds != null).reduce(BigDecimal.ZERO,
				BigDecimal::add);
		return new PlannedRun(head.number(), head.job(), head.title(), head.at(), head.by(), head.seconds(),
				measured.signum() == 0 ? Optional.empty() : Optional.of(measured), closed, pieces(connection, head.number()),
				sheets(connection, head.number()), used(connection, head.number()), marks(connection, head.number()));
	}

	private static int marks(Connection connection, long run) throws SQLException {
		return Sql.first(connection, "SELECT SUM(CASE WHEN takes_back IS NULL THEN 1 ELSE -1 END) FROM work_mark WHERE run = ?",
				row -> row.getInt(1), run).orElse(0);
	}

	private static List<RunPiece> pieces(Connection connection, long run) throws SQLException {
		return Sql.list(connection, "SELECT p.job, j.number, j.title, p.stock, p.colour, p.pieces, p.printed, "
				+ made("PRINT") + ", " + made("CUT") + ", COALESCE((SELECT SUM(d.spoiled) FROM work_mark_piece d "
				+ "WHERE d.run = p.run AND d.job = p.job AND d.stock = p.stock AND d.colour = p.colour), 0) "
				+ "FROM work_run_piece p JOIN orders_job j ON j.id = p.job WHERE p.run = ? "
				+ "ORDER BY j.number, p.stock, p.colour",
				row -> new RunPiece(row.getString(1), row.getLong(2), row.getString(3),
						new StockColour(row.getString(4), row.getString(5)), row.getInt(6), row.getBoolean(7), row.getInt(8),
						row.getInt(9), row.getInt(10)),
				run);
	}

	private static String made(String step) {
		return "COALESCE((SELECT SUM(d.made) FROM work_mark_piece d JOIN work_mark m ON m.run = d.run AND m.place = d.place "
				+ "WHERE m.step = '" + step + "' AND d.run = p.run AND d.job = p.job AND d.stock = p.stock "
				+ "AND d.colour = p.colour), 0)";
	}

	private static List<RunSheet> sheets(Connection connection, long run) throws SQLException {
		return Sql.list(connection, "SELECT stock, colour, leftover, amount, width, height, parts_area, offcut_width, "
				+ "offcut_height FROM work_run_sheet WHERE run = ? ORDER BY place",
				row -> new RunSheet(new StockColour(row.getString(1), row.getString(2)), row.getString(3),
						row.getBigDecimal(4), row.getBigDecimal(5), row.getBigDecimal(6), row.getBigDecimal(7),
						row.getBigDecimal(8), row.getBigDecimal(9)),
				run);
	}

	private static SortedMap<StockColour, BigDecimal> used(Connection connection, long run) throws SQLException {
		SortedMap<StockColour, BigDecimal> used = new TreeMap<>();
		Sql.list(connection, "SELECT stock, colour, SUM(amount) FROM work_mark_sheet WHERE run = ? GROUP BY stock, colour",
				row -> new Amount(new StockColour(row.getString(1), row.getString(2)), row.getBigDecimal(3)), run)
				.forEach(each -> used.put(each.of(), each.amount()));
		return used;
	}

	static Instant instant(ResultSet row, int column) throws SQLException {
		return row.getObject(column, OffsetDateTime.class).toInstant();
	}

	static OffsetDateTime time(Instant at) {
		return at.atOffset(ZoneOffset.UTC);
	}
}
