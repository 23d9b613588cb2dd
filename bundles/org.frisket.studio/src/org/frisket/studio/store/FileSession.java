package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

import org.frisket.model.WholeFile;

/** The one connection to a file; transactions of several threads come one after the other. */
final class FileSession implements Session {

	/** In bytes: what H2 needs at most to write a change. */
	private static final long ROOM = 8L << 20;

	private final Path file;
	private final Turn turn;
	private final Connection connection;
	private final RevisionMark mark;

	/**
	 * @param turn that ends with the session; null if none was taken
	 * @param mark to be changed when something is kept; null where nothing can be
	 */
	FileSession(Path file, Turn turn, Connection connection, RevisionMark mark) {
		this.file = file;
		this.turn = turn;
		this.connection = connection;
		this.mark = mark;
	}

	@Override
	public synchronized <T, X extends Exception> T transaction(Work<T, X> work, boolean keep) throws StoreException, X {
		boolean done = false;
		try {
			connection.setAutoCommit(false);
			T result = work.on(connection);
			if (keep) {
				checkRoom();
				ChangeCount count = ChangeCount.add(connection);
				connection.commit();
				done = true;
				toDisc();
				// not before it is on the disc
				mark.change(count);
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

	/** H2 does not say so if it could not write what was committed to a disc that is full: it is gone when it is closed. */
	private void checkRoom() throws StoreException {
		try {
			if (Files.getFileStore(file).getUsableSpace() < ROOM) {
				throw new StoreException(file, Messages.Store_full);
			}
		} catch (StoreException e) {
			throw e;
		} catch (IOException e) {
			throw new StoreException(file, WholeFile.reason(e), e);
		}
	}

	/** H2 writes what was committed a little later, unless it is asked to. */
	private void toDisc() throws SQLException {
		try (Statement statement = connection.createStatement()) {
			statement.execute("CHECKPOINT SYNC");
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
				LeftFiles.left(file);
				turn.close();
			}
		} catch (IOException e) {
			throw new StoreException(file, WholeFile.reason(e), e);
		}
	}
}
