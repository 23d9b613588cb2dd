package org.frisket.orders.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

import org.frisket.orders.customers.Customer;
import org.frisket.studio.NameKey;
import org.frisket.studio.store.Sql;

/** Customers as rows. */
public final class CustomerRows {

	private static final String SELECT = "SELECT id, revision, name, contact, mail, phone, address, agreement, notes, "
			+ "changed FROM orders_customer ";

	private static final String INSERT = "INSERT INTO orders_customer (id, revision, name, name_key, contact, mail, phone, "
			+ "address, agreement, notes, changed) VALUES (?, 1, ?, ?, ?, ?, ?, ?, ?, ?, ?)";

	/** So many are looked for at once. */
	private static final int PORTION = 500;

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

	/**
	 * The same of many.
	 *
	 * @return ids by the keys of the names that are some
	 */
	static Map<String, String> named(Connection connection, Collection<String> names, Instant at) throws SQLException {
		Map<String, String> missing = new LinkedHashMap<>();
		names.forEach(name -> missing.putIfAbsent(NameKey.of(name), name));
		missing.remove("");
		Map<String, String> ids = new HashMap<>();
		List<String> keys = List.copyOf(missing.keySet());
		for (int from = 0; from < keys.size(); from += PORTION) {
			List<String> some = keys.subList(from, Math.min(keys.size(), from + PORTION));
			Sql.list(connection, "SELECT name_key, id FROM orders_customer WHERE name_key IN (" + "?, ".repeat(some.size() - 1)
					+ "?)", row -> ids.put(row.getString(1), row.getString(2)), some);
		}
		missing.keySet().removeAll(ids.keySet());
		List<Object[]> rows = new ArrayList<>();
		missing.forEach((key, name) -> {
			String id = UUID.randomUUID().toString();
			ids.put(key, id);
			rows.add(values(id, Customer.named(name), at));
		});
		Sql.updateAll(connection, INSERT, rows);
		return ids;
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
		Sql.update(connection, INSERT, values(id, customer, at));
		return byId(connection, id).orElseThrow();
	}

	private static Object[] values(String id, Customer customer, Instant at) {
		return new Object[] { id, customer.name(), NameKey.of(customer.name()), customer.contact(), customer.mail(),
				customer.phone(), customer.address(), customer.agreement(), customer.notes(), JobRows.time(at) };
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
