package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;

import org.frisket.orders.Fact;
import org.frisket.studio.store.Sql;

/** What jobs were made with. */
public final class FactRows {

	private static final int LONGEST = 4000;

	private FactRows() {
	}

	public static List<Fact> list(Connection connection, String job) throws SQLException {
		return Sql.list(connection, "SELECT subject, item, field, content FROM orders_fact WHERE job = ? "
				+ "ORDER BY subject, item, field",
				row -> new Fact(Fact.Subject.valueOf(row.getString(1)), row.getString(2), row.getString(3), row.getString(4)),
				job);
	}

	/** @param facts no two of the same field */
	public static void replace(Connection connection, String job, List<Fact> facts) throws SQLException {
		Sql.update(connection, "DELETE FROM orders_fact WHERE job = ?", job);
		Sql.updateAll(connection, "INSERT INTO orders_fact (job, subject, item, field, content) VALUES (?, ?, ?, ?, ?)",
				facts.stream().map(fact -> new Object[] { job, fact.subject(), fact.item(), fact.field(),
						fact.text().substring(0, Math.min(LONGEST, fact.text().length())) }).toList());
	}

	/** Forgets who the customer was; that there was one is still told by a blank. */
	public static void forgetCustomer(Connection connection, String job) throws SQLException {
		Sql.update(connection, "UPDATE orders_fact SET content = '' WHERE job = ? AND subject = ?", job,
				Fact.Subject.CUSTOMER);
	}
}
