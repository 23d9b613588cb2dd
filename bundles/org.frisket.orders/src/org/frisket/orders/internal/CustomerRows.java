package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

import org.frisket.orders.customers.Customer;
import org.frisket.studio.NameKey;
import org.frisket.studio.store.Sql;

/** Customers as rows. */
public final class CustomerRows {

	private static final String SELECT = "SELECT id, revision, name, contact, mail, phone, address, agreement, notes, "
			+ "changed FROM orders_customer ";

	private CustomerRows() {
	}

	/** The id of the customer of a name, who is made if there is none; empty for no name. */
	public static Optional<String> named(Connection connection, String name, Instant at) throws SQLException {
		String key = NameKey.of(name);
		if (key.isEmpty()) {
			return Optional.empty();
		}
		Optional<String> known = Sql.first(connection, "SELECT id FROM orders_customer WHERE name_key = ?",
				row -> row.getString(1), key);
		if (known.isPresent()) {
			return known;
		}
		return Optional.of(insert(connection, UUID.randomUUID().toString(), Customer.named(name), at).id());
	}

	/** All, by name. */
	public static List<Customer> list(Connection connection) throws SQLException {
		return Sql.list(connection, SELECT + "ORDER BY name_key", CustomerRows::customer);
	}

	/** @param key of its name */
	public static Optional<Customer> find(Connection connection, String key) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE name_key = ?", CustomerRows::customer, key);
	}

	public static Optional<Customer> byId(Connection connection, String id) throws SQLException {
		return Sql.first(connection, SELECT + "WHERE id = ?", CustomerRows::customer, id);
	}

	private static Customer customer(ResultSet row) throws SQLException {
		return new Customer(row.getString(1), row.getLong(2), row.getString(3), row.getString(4), row.getString(5),
				row.getString(6), row.getString(7), row.getString(8), row.getString(9), JobRows.instant(row, 10));
	}

	public static Customer insert(Connection connection, String id, Customer customer, Instant at) throws SQLException {
		Sql.update(connection, "INSERT INTO orders_customer (id, revision, name, name_key, contact, mail, phone, address, "
				+ "agreement, notes, changed) VALUES (?, 1, ?, ?, ?, ?, ?, ?, ?, ?, ?)", id, customer.name(),
				NameKey.of(customer.name()), customer.contact(), customer.mail(), customer.phone(), customer.address(),
				customer.agreement(), customer.notes(), JobRows.time(at));
		return byId(connection, id).orElseThrow();
	}

	/** With a revision more. */
	public static Customer update(Connection connection, Customer customer, Instant at) throws SQLException {
		Sql.update(connection, "UPDATE orders_customer SET revision = revision + 1, name = ?, name_key = ?, contact = ?, "
				+ "mail = ?, phone = ?, address = ?, agreement = ?, notes = ?, changed = ? WHERE id = ?", customer.name(),
				NameKey.of(customer.name()), customer.contact(), customer.mail(), customer.phone(), customer.address(),
				customer.agreement(), customer.notes(), JobRows.time(at), customer.id());
		return byId(connection, customer.id()).orElseThrow();
	}

	/** @param id of one without jobs */
	public static void delete(Connection connection, String id) throws SQLException {
		Sql.update(connection, "DELETE FROM orders_customer WHERE id = ?", id);
	}
}
