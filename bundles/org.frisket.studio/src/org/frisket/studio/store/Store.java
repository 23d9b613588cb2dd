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
 * The studio's database, open for a piece of work. It is this process's alone until it is closed, so it is opened late
 * and closed soon; another process waits for it for some seconds. Opening brings its areas up to date.
 * <pre>
 * try (Store store = Store.open(Studio.folder(), AREA)) {
 * 	store.change(connection -&gt; Sql.update(connection, "UPDATE … WHERE id = ?", id));
 * }
 * </pre>
 * Safe for use by several threads; their transactions come one after the other.
 */
public final class Store implements AutoCloseable {

	private static final Duration PATIENCE = Duration.ofSeconds(5);
	private static final long RETRY_MS = 50;

	private final Path file;
	private final Turn turn;
	private final Connection connection;
	private final boolean readOnly;
	private final RevisionMark mark;

	private Store(Path file, Turn turn, Connection connection, boolean readOnly, RevisionMark mark) {
		this.file = file;
		this.turn = turn;
		this.connection = connection;
		this.readOnly = readOnly;
		this.mark = mark;
	}

	/**
	 * Opens the store of a studio for reading and writing. What is missing is made.
	 *
	 * @throws IOException with a message for people, if the folder or the store cannot be used
	 */
	public static Store open(StudioFolder studio, Area... areas) throws IOException {
		return open(studio, PATIENCE, areas);
	}

	static Store open(StudioFolder studio, Duration patience, Area... areas) throws IOException {
		studio.openForWriting();
		Path file = file(studio);
		Turn turn = turn(studio, patience);
		try {
			return new Store(file, turn, connection(file, turn, Set.of(areas), patience), false,
					new RevisionMark(studio.databaseRevision()));
		} catch (IOException | RuntimeException | Error e) {
			turn.close();
			throw e;
		}
	}

	/**
	 * Opens the store of a studio for looking things up, which works in a folder that must not be written to as well. A
	 * store that is not there is empty, and is not made.
	 *
	 * @throws IOException with a message for people, if the folder or the store cannot be used
	 */
	public static Store openForReading(StudioFolder studio, Area... areas) throws IOException {
		return openForReading(studio, PATIENCE, areas);
	}

	/** The same. @param patience for as long as another process is waited for that has it open */
	public static Store openForReading(StudioFolder studio, Duration patience, Area... areas) throws IOException {
		studio.open();
		Path file = file(studio);
		if (!Files.exists(file)) {
			return empty(file, areas);
		}
		if (Files.isWritable(studio.path()) && Files.isWritable(file)) {
			Store store = open(studio, patience, areas);
			return new Store(file, store.turn, store.connection, true, store.mark);
		}
		return protectedFile(file, patience, areas);
	}

	/**
	 * Another text after every change, by whichever process; what was looked up is still so while it is the same. It is
	 * cheap to ask for, opens no database, and is the same for ever in a studio without one.
	 */
	public static String revision(StudioFolder studio) {
		return Files.exists(file(studio)) ? new RevisionMark(studio.databaseRevision()).text() : "";
	}

	/** Where the store of a studio is. */
	public static Path file(StudioFolder studio) {
		return studio.database();
	}

	private static Turn turn(StudioFolder studio, Duration patience) throws IOException {
		Path file = file(studio);
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
	 * failed.
	 */
	private static void bringUpToDate(Path file, Set<Area> areas) throws IOException {
		Versions versions = new Versions(file);
		Path copy = file.resolveSibling("studio-update" + H2File.ENDING);
		try {
			if (Files.exists(file)) {
				// To read is enough for that, and writes nothing.
				try (Connection connection = H2File.open(file, true)) {
					if (versions.pending(connection, areas).isEmpty()) {
						return;
					}
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

	private static Store empty(Path file, Area... areas) throws IOException {
		try {
			Connection connection = H2File.inMemory();
			Versions versions = new Versions(file);
			versions.apply(connection, versions.pending(connection, Set.of(areas)));
			return new Store(file, null, connection, true, null);
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	/** No lock can be made beside it; the database's own is shared by those who only read. */
	static Store protectedFile(Path file, Duration patience, Area... areas) throws IOException {
		long end = System.nanoTime() + patience.toNanos();
		while (true) {
			try {
				Connection connection = H2File.open(file, true);
				if (!new Versions(file).pending(connection, Set.of(areas)).isEmpty()) {
					connection.close();
					throw new StoreException(file, Messages.Store_older);
				}
				return new Store(file, null, connection, true, null);
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

	/**
	 * Looks something up; all statements of the work see the same state.
	 *
	 * @throws StoreException if the database fails
	 */
	public <T, X extends Exception> T read(Work<T, X> work) throws StoreException, X {
		return transaction(work, false);
	}

	/**
	 * Changes something, wholly or, if anything is thrown, not at all.
	 *
	 * @throws StoreException if the database fails, or was opened for reading
	 */
	public <T, X extends Exception> T change(Work<T, X> work) throws StoreException, X {
		if (readOnly) {
			throw new StoreException(file, Messages.Store_readOnly);
		}
		T result = transaction(work, true);
		mark.change();
		return result;
	}

	private synchronized <T, X extends Exception> T transaction(Work<T, X> work, boolean keep) throws StoreException, X {
		boolean done = false;
		try {
			connection.setAutoCommit(false);
			T result = work.on(connection);
			if (keep) {
				connection.commit();
				done = true;
			}
			return result;
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		} finally {
			if (!done) {
				takeBack();
			}
		}
	}

	private void takeBack() throws StoreException {
		try {
			connection.rollback();
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		}
	}

	@Override
	public synchronized void close() throws StoreException {
		try {
			connection.close();
		} catch (SQLException e) {
			throw new StoreException(file, H2File.reason(e), e);
		} finally {
			release();
		}
	}

	private void release() throws StoreException {
		try {
			if (turn != null) {
				turn.close();
			}
		} catch (IOException e) {
			throw new StoreException(file, WholeFile.reason(e), e);
		}
	}
}
