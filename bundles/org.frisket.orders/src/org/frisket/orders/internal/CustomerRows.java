package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

import org.frisket.studio.store.Sql;

/** Customers as rows. */
public final class CustomerRows {

	private CustomerRows() {
	}

	/** The id of the customer of a name, who is made if there is none; empty for no name. */
	public static Optional<String> named(Connection connection, String name, Instant at) throws SQLException {
		String key = Words.key(name);
		if (key.isEmpty()) {
			return Optional.empty();
		}
		Optional<String> known = Sql.first(connection, "SELECT id FROM orders_customer WHERE name_key = ?",
				row -> row.getString(1), key);
		if (known.isPresent()) {
			return known;
		}
		String id = UUID.randomUUID().toString();
		Sql.update(connection, "INSERT INTO orders_customer (id, revision, name, name_key, contact, mail, phone, address, "
				+ "agreement, notes, changed) VALUES (?, 1, ?, ?, '', '', '', '', '', '', ?)", id, name.strip(), key,
				JobRows.time(at));
		return Optional.of(id);
	}
}
