package org.frisket.orders.work.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.frisket.model.Stage;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Step;
import org.frisket.studio.store.Sql;

/** How many pieces of jobs were made well so far, and how many are on runs that something is still to come of. */
public final class Tally {

	private static final String COLUMNS = "p.job, p.stock, p.colour, ";
	private static final String GROUPS = "GROUP BY p.job, p.stock, p.colour";

	private record Key(String job, StockColour of, Step step) {
	}

	private record Count(Key key, int pieces) {
	}

	private final Map<Key, Integer> made = new HashMap<>();
	private final Map<Key, Integer> coming = new HashMap<>();

	private Tally() {
	}

	/** Of the jobs that stand at a stage. */
	public static Tally atStages(Connection connection, List<Stage> stages) throws SQLException {
		return of(connection, "p.job IN (SELECT id FROM orders_job WHERE stage IN (" + "?, ".repeat(stages.size() - 1)
				+ "?)) ", stages);
	}

	/** @param job its id */
	public static Tally ofJob(Connection connection, String job) throws SQLException {
		return of(connection, "p.job = ? ", job);
	}

	private static Tally of(Connection connection, String which, Object which1) throws SQLException {
		Tally tally = new Tally();
		for (Step step : Step.values()) {
			Sql.list(connection, "SELECT " + COLUMNS + "SUM(p.made) FROM work_mark_piece p "
					+ "JOIN work_mark m ON m.run = p.run AND m.place = p.place WHERE m.step = ? AND " + which + GROUPS,
					row -> count(row, step), step, which1).forEach(each -> tally.made.put(each.key(), each.pieces()));
			// a step is over once it, or one after it, is
			Sql.list(connection, "SELECT " + COLUMNS + "SUM(CASE WHEN p.pieces > COALESCE(d.made, 0) "
					+ "THEN p.pieces - COALESCE(d.made, 0) ELSE 0 END) FROM work_run_piece p LEFT JOIN (SELECT x.run, x.job, "
					+ "x.stock, x.colour, SUM(x.made) AS made FROM work_mark_piece x JOIN work_mark y ON y.run = x.run "
					+ "AND y.place = x.place WHERE y.step = ? GROUP BY x.run, x.job, x.stock, x.colour) d ON d.run = p.run "
					+ "AND d.job = p.job AND d.stock = p.stock AND d.colour = p.colour WHERE " + (step == Step.PRINT
							? "p.printed AND "
							: "")
					+ which + "AND p.run NOT IN (SELECT z.run FROM work_mark z WHERE z.step IN (?, 'CUT') "
					+ "GROUP BY z.run, z.step HAVING SUM(z.closes) > 0) " + GROUPS, row -> count(row, step), step, which1, step)
					.forEach(each -> tally.coming.put(each.key(), each.pieces()));
		}
		return tally;
	}

	private static Count count(ResultSet row, Step step) throws SQLException {
		return new Count(new Key(row.getString(1), new StockColour(row.getString(2), row.getString(3)), step), row.getInt(4));
	}

	/** Made well. */
	public int made(String job, StockColour of, Step step) {
		return made.getOrDefault(new Key(job, of, step), 0);
	}

	/** On runs that something is still to come of, and not made there yet. */
	public int coming(String job, StockColour of, Step step) {
		return coming.getOrDefault(new Key(job, of, step), 0);
	}
}
