package org.frisket.orders.work.internal;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.work.RunMark;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Step;
import org.frisket.studio.store.Sql;

/** What was said of runs, as rows: added to, and never changed. */
public final class MarkRows {

	/** What can be taken back. @param person who said it */
	public record Said(int place, Step step, Instant at, String person) {
	}

	/** @param counted by how much the shelf was counted down */
	public record Used(StockColour of, BigDecimal amount, BigDecimal counted) {
	}

	/** @param amount 1 for one that was kept, -1 for one that was used */
	public record Piece(String leftover, int amount) {
	}

	/** @param since when the job came there */
	public record Move(Stage from, Stage to, Instant since) {
	}

	private MarkRows() {
	}

	/** @return its place among what was said of the run */
	public static int add(Connection connection, long run, RunMark mark, Instant at, String person) throws SQLException {
		int place = nextPlace(connection, run);
		Sql.update(connection, "INSERT INTO work_mark (run, place, step, made_at, person, seconds, closes, remark) "
				+ "VALUES (?, ?, ?, ?, ?, ?, ?, ?)", run, place, mark.step(), RunRows.time(at), person, mark.seconds(),
				mark.closes() ? 1 : 0, mark.remark());
		Sql.updateAll(connection,
				"INSERT INTO work_mark_piece (run, place, job, stock, colour, made, spoiled) VALUES (?, ?, ?, ?, ?, ?, ?)",
				mark.pieces().stream().map(count -> new Object[] { run, place, count.job(), count.of().stock(),
						count.of().colour(), count.made(), count.spoiled() }).toList());
		return place;
	}

	private static int nextPlace(Connection connection, long run) throws SQLException {
		return Sql.first(connection, "SELECT COALESCE(MAX(place), 0) + 1 FROM work_mark WHERE run = ?",
				row -> row.getInt(1), run).orElse(1);
	}

	/** What was said last of a run and is not taken back. */
	public static Optional<Said> last(Connection connection, long run) throws SQLException {
		return Sql.first(connection, "SELECT m.place, m.step, m.made_at, m.person FROM work_mark m WHERE m.run = ? "
				+ "AND m.takes_back IS NULL AND m.place NOT IN (SELECT t.takes_back FROM work_mark t WHERE t.run = m.run "
				+ "AND t.takes_back IS NOT NULL) ORDER BY m.place DESC",
				row -> new Said(row.getInt(1), Step.valueOf(row.getString(2)), RunRows.instant(row, 3), row.getString(4)), run);
	}

	/** Says the same once more with the signs turned. @return its place */
	public static int takeBack(Connection connection, long run, int said, Instant at, String person, String remark)
			throws SQLException {
		int place = nextPlace(connection, run);
		Sql.update(connection, "INSERT INTO work_mark (run, place, step, made_at, person, seconds, closes, takes_back, remark) "
				+ "SELECT run, CAST(? AS INTEGER), step, CAST(? AS TIMESTAMP WITH TIME ZONE), CAST(? AS VARCHAR(200)), -seconds, "
				+ "-closes, place, CAST(? AS VARCHAR(4000)) FROM work_mark WHERE run = ? AND place = ?", place,
				RunRows.time(at), person, remark, run, said);
		Sql.update(connection, "INSERT INTO work_mark_piece (run, place, job, stock, colour, made, spoiled) SELECT run, "
				+ "CAST(? AS INTEGER), job, stock, colour, -made, -spoiled FROM work_mark_piece WHERE run = ? AND place = ?",
				place, run, said);
		Sql.update(connection, "INSERT INTO work_mark_sheet (run, place, stock, colour, amount, counted) SELECT run, "
				+ "CAST(? AS INTEGER), stock, colour, -amount, -counted FROM work_mark_sheet WHERE run = ? AND place = ?",
				place, run, said);
		Sql.update(connection, "INSERT INTO work_mark_leftover (run, place, leftover, amount) SELECT run, "
				+ "CAST(? AS INTEGER), leftover, -amount FROM work_mark_leftover WHERE run = ? AND place = ?", place, run, said);
		return place;
	}

	public static void addUsed(Connection connection, long run, int place, Used used) throws SQLException {
		Sql.update(connection, "INSERT INTO work_mark_sheet (run, place, stock, colour, amount, counted) "
				+ "VALUES (?, ?, ?, ?, ?, ?)", run, place, used.of().stock(), used.of().colour(), used.amount(), used.counted());
	}

	public static List<Used> used(Connection connection, long run, int place) throws SQLException {
		return Sql.list(connection, "SELECT stock, colour, amount, counted FROM work_mark_sheet WHERE run = ? AND place = ? "
				+ "ORDER BY stock, colour", row -> new Used(new StockColour(row.getString(1), row.getString(2)),
						row.getBigDecimal(3), row.getBigDecimal(4)), run, place);
	}

	public static void addLeftovers(Connection connection, long run, int place, Map<String, Integer> amounts)
			throws SQLException {
		Sql.updateAll(connection, "INSERT INTO work_mark_leftover (run, place, leftover, amount) VALUES (?, ?, ?, ?)",
				amounts.entrySet().stream().map(each -> new Object[] { run, place, each.getKey(), each.getValue() }).toList());
	}

	public static List<Piece> leftovers(Connection connection, long run, int place) throws SQLException {
		return Sql.list(connection, "SELECT leftover, amount FROM work_mark_leftover WHERE run = ? AND place = ? "
				+ "ORDER BY leftover", row -> new Piece(row.getString(1), row.getInt(2)), run, place);
	}

	/** Whether leftovers of a run are used, or offcuts of it kept, as things stand. @param amount -1 or 1 */
	public static boolean hasLeftovers(Connection connection, long run, int amount) throws SQLException {
		return !Sql.list(connection, "SELECT leftover FROM work_mark_leftover WHERE run = ? GROUP BY leftover "
				+ "HAVING SUM(amount) = ?", row -> row.getString(1), run, amount).isEmpty();
	}

	public static void addMove(Connection connection, long run, int place, String job, Move move) throws SQLException {
		Sql.update(connection, "INSERT INTO work_move (run, place, job, from_stage, to_stage, since) VALUES (?, ?, ?, ?, ?, ?)",
				run, place, job, move.from(), move.to(), RunRows.time(move.since()));
	}

	/** How a job was brought to a stage that it has not left since. @param since when it came there */
	public static Optional<Move> move(Connection connection, String job, Stage to, Instant since) throws SQLException {
		return Sql.first(connection, "SELECT from_stage, to_stage, since FROM work_move WHERE job = ? AND to_stage = ? "
				+ "AND since = ?", row -> new Move(Stage.valueOf(row.getString(1)), Stage.valueOf(row.getString(2)),
						RunRows.instant(row, 3)), job, to, RunRows.time(since));
	}
}
