package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Stage;
import org.frisket.model.StageChange;
import org.frisket.orders.Entry;
import org.frisket.orders.StageStep;
import org.frisket.studio.store.Sql;

/** What became of jobs: added to, and never changed. */
public final class StageRows {

	private static final String ADD = "INSERT INTO orders_stage_change (job, place, changed_at, person, from_stage, to_stage, "
			+ "remark) VALUES (?, (SELECT COALESCE(MAX(place), 0) + 1 FROM orders_stage_change WHERE job = ?), ?, ?, ?, ?, ?)";

	private StageRows() {
	}

	/** The oldest first. */
	public static List<StageChange> list(Connection connection, String job) throws SQLException {
		return Sql.list(connection, "SELECT c.changed_at, c.person, c.from_stage, c.to_stage, c.remark, j.number "
				+ "FROM orders_stage_change c JOIN orders_job j ON j.id = c.job WHERE c.job = ? ORDER BY c.place", row -> {
					StageChange change = FrisketFactory.INSTANCE.createStageChange();
					change.setAt(JobRows.instant(row, 1));
					change.setWho(row.getString(2));
					change.setFrom(Unreadable.value(Stage.class, row.getString(3), row.getLong(6)));
					change.setTo(Unreadable.value(Stage.class, row.getString(4), row.getLong(6)));
					change.setRemark(row.getString(5).isEmpty() ? null : row.getString(5));
					return change;
				}, job);
	}

	public static void add(Connection connection, String job, Instant at, String person, Stage from, Stage to,
			String remark) throws SQLException {
		Sql.update(connection, ADD, job, job, JobRows.time(at), person, from, to, remark);
	}

	/**
	 * Brings a job to another stage, and remembers it. Both go one way to a server; the job comes first, so that two desks
	 * meet there.
	 *
	 * @param before the job as this transaction has found it
	 * @return the job as it is now
	 */
	public static Entry change(Connection connection, Entry before, Stage to, Instant at, String person, String remark)
			throws SQLException {
		OffsetDateTime time = JobRows.time(at);
		Sql.update(connection, JobRows.STAGE + "; " + ADD, to, time, time, person, before.id(), before.id(), before.id(), time,
				person, before.stage(), to, remark);
		return before.at(to, at, person);
	}

	/** The stage a job stands at, or stood at before it was put on hold or cancelled. */
	public static Stage stood(Connection connection, Entry entry) throws SQLException {
		Stage stood = entry.stage();
		List<StageChange> history = list(connection, entry.id());
		for (int i = history.size() - 1; i >= 0 && StageStep.isAside(stood); i--) {
			stood = history.get(i).getFrom();
		}
		return StageStep.isAside(stood) ? Stage.ENQUIRY : stood;
	}
}
