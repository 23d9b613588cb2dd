package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Set;

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
			return new FileSession(file, turn, connection(file, turn, areas, patience),
					new RevisionMark(studio.databaseRevision()));
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
		return protectedFile(file, patience, areas);
	}

	@Override
	public String revision() {
		return Files.exists(studio.database()) ? new RevisionMark(studio.databaseRevision()).text() : "";
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

	private static Connection connection(Path file, Turn turn, Set<Area> areas, Duration patience) throws IOException {
		if (!turn.bringUpToDate(areas, patience, () -> bringUpToDate(file, areas))) {
			throw new StoreException(file, Messages.Store_inUse);
		}
		try {
			return H2File.open(file, false);
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	/**
	 * On a copy, which then takes the place of the file: H2 cannot take back what a migration did to its tables before it
	 * failed. A file that needs none is tidied if it is time for that.
	 */
	private static void bringUpToDate(Path file, Set<Area> areas) throws IOException {
		Versions versions = new Versions(file, H2File::reason);
		TidyFile tidy = new TidyFile(file);
		Path copy = file.resolveSibling("studio-update" + H2File.ENDING);
		try {
			tidy.sweep();
			if (Files.exists(file)) {
				boolean upToDate;
				// To read is enough for that, and writes nothing.
				try (Connection connection = H2File.open(file, true)) {
					upToDate = versions.pending(connection, areas).isEmpty();
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
			}
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
			Versions versions = new Versions(file, H2File::reason);
			versions.apply(connection, versions.pending(connection, areas));
			return new FileSession(file, null, connection, null);
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	/** No lock can be made beside it; the database's own is shared by those who only read. */
	static Session protectedFile(Path file, Duration patience, Set<Area> areas) throws IOException {
		long end = System.nanoTime() + patience.toNanos();
		while (true) {
			try {
				Connection connection = H2File.open(file, true);
				if (!new Versions(file, H2File::reason).pending(connection, areas).isEmpty()) {
					connection.close();
					throw new StoreException(file, Messages.Store_older);
				}
				return new FileSession(file, null, connection, null);
			} catch (SQLException e) {
				if (!H2File.isInUse(e) || System.nanoTime() >= end || !pause()) {
					throw new StoreException(file, H2File.reason(e), e);
				}
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
