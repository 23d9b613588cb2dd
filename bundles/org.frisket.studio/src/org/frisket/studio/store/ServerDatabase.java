package org.frisket.studio.store;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;

/** A database on a PostgreSQL server that several desks share. */
final class ServerDatabase implements Database {

	/** Of those that bring tables up to date; any number that nobody else is likely to lock. */
	private static final long MIGRATION_LOCK = 0x4672_6973_6b65_74L;

	private final String place;
	private final ServerConnections connections;
	private final ServerRevision revision;
	private final Set<Area> upToDate = new HashSet<>();

	/** @param place what messages call it */
	ServerDatabase(String place, ServerConnections.Source source) {
		this.place = place;
		connections = new ServerConnections(source);
		revision = new ServerRevision(connections);
	}

	@Override
	public Session open(Set<Area> areas, Duration patience) throws IOException {
		bringUpToDate(areas);
		return new ServerSession(place, connections, revision, patience);
	}

	/** Tables that are missing are made here too: a server whose tables are looked up is there to be written to. */
	@Override
	public Session openForReading(Set<Area> areas, Duration patience) throws IOException {
		return open(areas, patience);
	}

	@Override
	public String revision() {
		return revision.text();
	}

	@Override
	public void end() {
		connections.end();
	}

	@Override
	public String toString() {
		return place;
	}

	private synchronized void bringUpToDate(Set<Area> areas) throws IOException {
		if (upToDate.containsAll(areas)) {
			return;
		}
		Versions versions = new Versions(place, ServerReasons::of);
		try {
			Connection connection = connections.take();
			boolean sound = false;
			try {
				// it may have been used for looking things up
				connection.setReadOnly(false);
				connection.setAutoCommit(true);
				if (!versions.pending(connection, areas).isEmpty() || !ServerMarks.isReady(connection)) {
					migrate(connection, versions, areas);
				}
				ServerMarks.clear(connection);
				sound = true;
			} finally {
				connections.give(connection, sound);
			}
		} catch (SQLException e) {
			throw new StoreException(place, ServerReasons.of(e), e);
		}
		upToDate.addAll(areas);
	}

	private static void migrate(Connection connection, Versions versions, Set<Area> areas) throws SQLException, IOException {
		Sql.list(connection, "SELECT pg_advisory_lock(?)", row -> "", MIGRATION_LOCK);
		try {
			// another desk may have done it while this one waited
			versions.apply(connection, versions.pending(connection, areas));
			ServerMarks.make(connection);
		} finally {
			connection.setAutoCommit(true);
			Sql.list(connection, "SELECT pg_advisory_unlock(?)", row -> "", MIGRATION_LOCK);
		}
	}
}
