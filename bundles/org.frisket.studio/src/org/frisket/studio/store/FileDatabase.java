package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;
import org.frisket.studio.StudioFolder;

/**
 * The database that a studio has in its own folder. It is this process's alone until it is closed, so it is opened late
 * and closed soon; another process waits for it.
 */
record FileDatabase(StudioFolder studio) implements Database {

	private static final long RETRY_MS = 50;

	@Override
	public Session open(Set<Area> areas, Duration patience) throws IOException {
		studio.openForWriting();
		Path file = studio.database();
		Turn turn = turn(patience);
		try {
			return new FileSession(file, turn, connection(file, turn, areas, patience), mark());
		} catch (IOException | RuntimeException | Error e) {
			turn.close();
			throw e;
		}
	}

	@Override
	public Session openForReading(Set<Area> areas, Duration patience) throws IOException {
		Path file = studio.database();
		if (!Files.exists(studio.path())) {
			// it is not made by somebody who only looks
			return empty(file, areas);
		}
		studio.open();
		if (!Files.exists(file)) {
			return empty(file, areas);
		}
		if (Files.isWritable(studio.path()) && Files.isWritable(file)) {
			return open(areas, patience);
		}
		return protectedFile(file, mark(), patience, areas);
	}

	@Override
	public String revision() {
		return Files.exists(studio.database()) ? mark().text() : "";
	}

	private RevisionMark mark() {
		return new RevisionMark(studio.databaseRevision());
	}

	/** As messages call it. */
	@Override
	public String toString() {
		return studio.database().toString();
	}

	private Turn turn(Duration patience) throws IOException {
		Path file = studio.database();
		try {
			return Turn.take(studio.databaseLock(), patience)
					.orElseThrow(() -> new StoreException(file, Messages.Store_inUse));
		} catch (StoreException e) {
			throw e;
		} catch (IOException e) {
			throw new StoreException(file, WholeFile.reason(e), e);
		}
	}

	private Connection connection(Path file, Turn turn, Set<Area> areas, Duration patience) throws IOException {
		if (!turn.bringUpToDate(areas, patience, () -> bringUpToDate(file, areas))) {
			throw new StoreException(file, Messages.Store_inUse);
		}
		try {
			return opened(file, mark(), false);
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	/**
	 * H2 opens a file whose end is lost as it was before, in silence.
	 *
	 * @throws StoreException if it has lost changes that were kept
	 */
	private static Connection opened(Path file, RevisionMark mark, boolean readOnly) throws SQLException, StoreException {
		// before the file is opened: another thread may change it meanwhile
		Optional<ChangeCount> kept = mark.count();
		Connection connection = H2File.open(file, readOnly);
		boolean whole = false;
		try {
			Optional<ChangeCount> there = ChangeCount.of(connection);
			if (kept.isPresent() && kept.get().isAheadOf(there)) {
				throw new StoreException(file, NLS.bind(Messages.Store_setBack, new Object[] {
						there.map(ChangeCount::changes).orElse(0L), kept.get().changes(), mark.file().getFileName() }));
			}
			whole = true;
			return connection;
		} finally {
			if (!whole) {
				connection.close();
			}
		}
	}

	/**
	 * On a copy, which then takes the place of the file: H2 cannot take back what a migration did to its tables before it
	 * failed. A file that needs none is tidied if it is time for that.
	 */
	private void bringUpToDate(Path file, Set<Area> areas) throws IOException {
		TidyFile tidy = new TidyFile(file);
		tidy.sweep();
		if (LeftFiles.isUpToDate(file, areas)) {
			return;
		}
		lookInto(file, areas, tidy);
		LeftFiles.lookedInto(file, areas);
	}

	private void lookInto(Path file, Set<Area> areas, TidyFile tidy) throws IOException {
		Versions versions = new Versions(file, H2File::reason);
		Path copy = file.resolveSibling("studio-update" + H2File.ENDING);
		try {
			if (Files.exists(file)) {
				boolean upToDate;
				// To read is enough for that, and writes nothing.
				try (Connection connection = opened(file, mark(), true)) {
					upToDate = versions.pending(connection, areas).isEmpty() && ChangeCount.of(connection).isPresent();
					if (upToDate && !tidy.isTime(connection)) {
						return;
					}
				}
				if (upToDate) {
					tidy.write();
					return;
				}
				Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.COPY_ATTRIBUTES);
			} else {
				Files.deleteIfExists(copy);
			}
			try (Connection connection = H2File.open(copy, false)) {
				versions.apply(connection, versions.pending(connection, areas));
				ChangeCount.make(connection);
			}
			H2File.toDisc(copy);
			Files.move(copy, file, StandardCopyOption.ATOMIC_MOVE);
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		} catch (StoreException e) {
			throw e;
		} catch (IOException e) {
			throw new StoreException(file, WholeFile.reason(e), e);
		} finally {
			Files.deleteIfExists(copy);
		}
	}

	private static Session empty(Path file, Set<Area> areas) throws IOException {
		try {
			Connection connection = H2File.inMemory();
			return kept(connection, () -> {
				Versions versions = new Versions(file, H2File::reason);
				versions.apply(connection, versions.pending(connection, areas));
				return new FileSession(file, null, connection, null);
			});
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	/** No lock can be made beside it; the database's own is shared by those who only read. */
	static Session protectedFile(Path file, RevisionMark mark, Duration patience, Set<Area> areas) throws IOException {
		long end = System.nanoTime() + patience.toNanos();
		while (true) {
			try {
				Connection connection = opened(file, mark, true);
				return kept(connection, () -> {
					if (!new Versions(file, H2File::reason).pending(connection, areas).isEmpty()) {
						throw new StoreException(file, Messages.Store_older);
					}
					return new FileSession(file, null, connection, null);
				});
			} catch (SQLException e) {
				if (!H2File.isInUse(e) || System.nanoTime() >= end || !pause()) {
					throw new StoreException(file, H2File.reason(e), e);
				}
			}
		}
	}

	/** What a connection is opened for. */
	private interface Use {
		Session begin() throws SQLException, IOException;
	}

	/** A connection that nobody gets to use holds the file nevertheless until it is closed. */
	private static Session kept(Connection connection, Use use) throws SQLException, IOException {
		boolean used = false;
		try {
			Session session = use.begin();
			used = true;
			return session;
		} finally {
			if (!used) {
				connection.close();
			}
		}
	}

	private static boolean pause() {
		try {
			Thread.sleep(RETRY_MS);
			return true;
		} catch (InterruptedException e) {
			Thread.currentThread().interrupt();
			return false;
		}
	}
}
