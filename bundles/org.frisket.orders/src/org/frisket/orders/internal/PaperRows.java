package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

import org.frisket.orders.Paper;
import org.frisket.orders.PaperKind;
import org.frisket.studio.store.Sql;

/** What was handed out of jobs: added to, and never changed. */
public final class PaperRows {

	private PaperRows() {
	}

	/** The oldest first. */
	public static List<Paper> list(Connection connection, String job) throws SQLException {
		return Sql.list(connection, "SELECT p.kind, p.made_at, p.person, p.remark, j.number FROM orders_paper p "
				+ "JOIN orders_job j ON j.id = p.job WHERE p.job = ? ORDER BY p.place",
				row -> new Paper(Unreadable.value(PaperKind.class, row.getString(1), row.getLong(5)), JobRows.instant(row, 2),
						row.getString(3), row.getString(4)),
				job);
	}

	public static boolean has(Connection connection, String job, PaperKind kind) throws SQLException {
		return list(connection, job).stream().anyMatch(paper -> paper.kind() == kind);
	}

	public static void add(Connection connection, String job, Paper paper) throws SQLException {
		Sql.update(connection, "INSERT INTO orders_paper (job, place, kind, made_at, person, remark) "
				+ "VALUES (?, (SELECT COALESCE(MAX(place), 0) + 1 FROM orders_paper WHERE job = ?), ?, ?, ?, ?)", job, job,
				paper.kind(), JobRows.time(paper.at()), paper.person(), paper.remark());
	}
}
