package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.reports.Delivery;
import org.frisket.studio.store.Sql;

/** Jobs that are delivered, by their history. */
public final class DeliveryRows {

	private DeliveryRows() {
	}

	/**
	 * By number. Only what is still said to be delivered; the last time counts. A job that came as delivered, with nothing
	 * of it in its history, was delivered when it came.
	 */
	public static List<Delivery> list(Connection connection) throws SQLException {
		return Sql.list(connection, "SELECT j.number, j.title, j.due, COALESCE((SELECT MAX(s.changed_at) "
				+ "FROM orders_stage_change s WHERE s.job = j.id AND s.to_stage = ?), j.stage_since) FROM orders_job j "
				+ "WHERE j.stage = ? ORDER BY j.number",
				row -> new Delivery(row.getLong(1), row.getString(2), Optional.ofNullable(row.getObject(3, LocalDate.class)),
						JobRows.instant(row, 4)),
				Stage.DELIVERED, Stage.DELIVERED);
	}
}
