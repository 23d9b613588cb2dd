package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.function.UnaryOperator;

import org.frisket.studio.store.Sql;

/** What people remarked on jobs. */
public final class RemarkRows {

	private static final int LONGEST = 4000;

	private record Remark(int place, String text) {
	}

	private RemarkRows() {
	}

	/** The one reason to change what is otherwise only added to: that a name must not be kept. */
	public static void replace(Connection connection, String job, UnaryOperator<String> by) throws SQLException {
		replace(connection, "SELECT place, remark FROM orders_stage_change WHERE job = ?",
				"UPDATE orders_stage_change SET remark = ? WHERE job = ? AND place = ?", job, by);
		replace(connection, "SELECT place, remark FROM orders_paper WHERE job = ?",
				"UPDATE orders_paper SET remark = ? WHERE job = ? AND place = ?", job, by);
	}

	private static void replace(Connection connection, String select, String update, String job, UnaryOperator<String> by)
			throws SQLException {
		List<Remark> remarks = Sql.list(connection, select, row -> new Remark(row.getInt(1), row.getString(2)), job);
		for (Remark remark : remarks) {
			String text = by.apply(remark.text());
			if (!text.equals(remark.text())) {
				Sql.update(connection, update, text.substring(0, Math.min(text.length(), LONGEST)), job, remark.place());
			}
		}
	}
}
