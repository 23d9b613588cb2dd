package org.frisket.studio.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;

import org.postgresql.PGConnection;

/**
 * Another text after every change on a server, by LISTEN and NOTIFY. A thread of its own hears of changes, from the first
 * time somebody asks; while it cannot, every question is answered with another text.
 */
final class ServerRevision {

	/** Sent with every change, right after it is kept. */
	static final String NOTIFY = "NOTIFY frisket_change";

	private static final String LISTEN = "LISTEN frisket_change";
	private static final int WAIT_MS = 10_000;
	private static final long AGAIN_MS = 1_000;

	private final ServerConnections connections;
	private boolean listening;
	private volatile String text = "";
	private volatile boolean hears;

	ServerRevision(ServerConnections connections) {
		this.connections = connections;
	}

	String text() {
		listen();
		return hears ? text : UUID.randomUUID().toString();
	}

	/** Something was changed from here; its notice is still under way. */
	void change() {
		text = UUID.randomUUID().toString();
	}

	/** Tells others of a change whose notice may have been lost with the connection. */
	static void tell(Connection connection) throws SQLException {
		connection.setAutoCommit(true);
		try (Statement statement = connection.createStatement()) {
			statement.execute(NOTIFY);
		}
	}

	private synchronized void listen() {
		if (!listening) {
			listening = true;
			Thread thread = new Thread(this::hear, "changes of the studio's database");
			thread.setDaemon(true);
			thread.start();
		}
	}

	private void hear() {
		while (!Thread.currentThread().isInterrupted()) {
			try {
				Connection connection = connections.connect();
				try {
					hear(connection);
				} finally {
					hears = false;
					ServerConnections.end(connection);
				}
			} catch (SQLException lost) {
				pause();
			}
		}
	}

	private void hear(Connection connection) throws SQLException {
		connection.setAutoCommit(true);
		try (Statement statement = connection.createStatement()) {
			statement.execute(LISTEN);
		}
		// what was changed before is not heard of
		change();
		hears = true;
		PGConnection server = connection.unwrap(PGConnection.class);
		while (!Thread.currentThread().isInterrupted()) {
			if (server.getNotifications(WAIT_MS).length > 0) {
				change();
			} else if (!connection.isValid(2)) {
				return;
			}
		}
	}

	private static void pause() {
		try {
			Thread.sleep(AGAIN_MS);
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
		}
	}
}
