package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;

import org.frisket.studio.StudioFolder;

/**
 * The studio's database, open for a piece of work: that in its folder, or the one the studio has named (see
 * {@link Databases}). That in the folder is this process's alone until it is closed, so it is opened late and closed
 * soon; another process waits for it for some seconds. Opening brings its areas up to date.
 * <pre>
 * try (Store store = Store.open(Studio.folder(), AREA)) {
 * 	store.change(connection -&gt; Sql.update(connection, "UPDATE … WHERE id = ?", id));
 * }
 * </pre>
 * Safe for use by several threads.
 */
public final class Store implements AutoCloseable {

	private static final Duration PATIENCE = Duration.ofSeconds(5);

	private final Object place;
	private final Session session;
	private final boolean readOnly;

	private Store(Object place, Session session, boolean readOnly) {
		this.place = place;
		this.session = session;
		this.readOnly = readOnly;
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
		Database database = Databases.of(studio);
		return new Store(database, database.open(Set.of(areas), patience), false);
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
		Database database = Databases.of(studio);
		return new Store(database, database.openForReading(Set.of(areas), patience), true);
	}

	/** The same of a file that must not be written to. */
	static Store protectedFile(Path file, Duration patience, Area... areas) throws IOException {
		RevisionMark mark = new RevisionMark(file.resolveSibling("studio.revision"));
		return new Store(file, FileDatabase.protectedFile(file, mark, patience, Set.of(areas)), true);
	}

	/**
	 * Another text after every change, by whichever process; what was looked up is still so while it is the same. It is
	 * cheap to ask for, opens no database, and is the same for ever in a studio without one.
	 */
	public static String revision(StudioFolder studio) {
		try {
			return Databases.of(studio).revision();
		} catch (IOException unreadable) {
			// whoever opens it is told why
			return "";
		}
	}

	/** Where the store of a studio is, if it is in its folder. */
	public static Path file(StudioFolder studio) {
		return studio.database();
	}

	/**
	 * Looks something up; all statements of the work see the same state.
	 *
	 * @param work may be called again from its beginning
	 * @throws StoreException if the database fails
	 */
	public <T, X extends Exception> T read(Work<T, X> work) throws StoreException, X {
		return session.transaction(work, false);
	}

	/**
	 * Changes something, wholly or, if anything is thrown, not at all.
	 *
	 * @param work may be called again from its beginning if the change of somebody else came between
	 * @throws StoreException if the database fails, or was opened for reading
	 */
	public <T, X extends Exception> T change(Work<T, X> work) throws StoreException, X {
		if (readOnly) {
			throw new StoreException(place, Messages.Store_readOnly);
		}
		return session.transaction(work, true);
	}

	@Override
	public void close() throws StoreException {
		session.close();
	}
}
