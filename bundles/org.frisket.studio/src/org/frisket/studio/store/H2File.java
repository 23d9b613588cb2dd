package org.frisket.studio.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

import org.eclipse.osgi.util.NLS;
import org.frisket.studio.internal.files.OpenedFile;
import org.h2.api.ErrorCode;
import org.h2.jdbcx.JdbcDataSource;
import org.h2.mvstore.MVStoreException;

/**
 * An embedded H2 database in one file.
 * <p>
 * Several programs take turns at it (see {@link Turn}). H2's own way for that, a server in whichever program came first,
 * is not used: it listens on all networks of the machine, and takes the others down with the first.
 */
final class H2File {

	static final String ENDING = ".mv.db";

	/** No dialect, no trace files in the studio's folder. */
	private static final String SETTINGS = ";MODE=STRICT;TRACE_LEVEL_FILE=0;TRACE_LEVEL_SYSTEM_OUT=0;LOCK_TIMEOUT=5000";
	/**
	 * Nothing that was written is moved or written over. H2 would do so at each closing and in between, and a program that
	 * is killed then loses what was kept. See {@link TidyFile} for what comes in its place.
	 */
	private static final String ADDED_TO = ";MAX_COMPACT_TIME=0;AUTO_COMPACT_FILL_RATE=0;REUSE_SPACE=FALSE";
	private static final String READ_ONLY = ";ACCESS_MODE_DATA=r";

	/** As Linux, macOS and Windows say it in English. */
	private static final String FULL = "(?is).*(no space left|disk quota exceeded|not enough space|disk is full).*";

	private H2File() {
	}

	/** @throws SQLException if it cannot be opened or made */
	static Connection open(Path file, boolean readOnly) throws SQLException, StoreException {
		String place = place(file);
		try {
			return OpenedFile.open(system -> connect(system, place, readOnly));
		} catch (SQLException e) {
			if (readOnly && e.getErrorCode() == ErrorCode.DATABASE_IS_READ_ONLY) {
				// it would throw away what it cannot make out; a whole file needs nothing written to be opened
				throw new SQLException(e.getMessage(), e.getSQLState(), ErrorCode.FILE_CORRUPTED_1, e);
			}
			throw e;
		}
	}

	/** The same. @param system which of H2's file systems reads and writes it */
	static Connection open(String system, Path file, boolean readOnly) throws SQLException, StoreException {
		return connect(system, place(file), readOnly);
	}

	private static Connection connect(String system, String place, boolean readOnly) throws SQLException {
		return connect(system + ":" + place + SETTINGS + ADDED_TO + (readOnly ? READ_ONLY : ""));
	}

	/** Writes a file anew, without what was replaced in it. It must not be in use, and is lost if that is broken off. */
	static void compact(Path file) throws SQLException, StoreException {
		String place = place(file);
		try (Connection connection = OpenedFile.open(system -> connect(system + ":" + place + SETTINGS));
				Statement statement = connection.createStatement()) {
			statement.execute("SHUTDOWN COMPACT");
		}
	}

	private static String place(Path file) throws StoreException {
		String path = file.toAbsolutePath().toString();
		// Behind a semicolon the rest of the name would be taken for settings, and there is no way to quote one.
		if (path.indexOf(';') >= 0) {
			throw new StoreException(file, Messages.Store_semicolon);
		}
		return path.substring(0, path.length() - ENDING.length());
	}

	/** An empty one in memory, gone when the connection is closed. */
	static Connection inMemory() throws SQLException {
		return connect("mem:" + SETTINGS);
	}

	/** Constructed directly: a driver in another bundle is not seen by {@link java.sql.DriverManager}. */
	private static Connection connect(String place) throws SQLException {
		JdbcDataSource source = new JdbcDataSource();
		source.setURL("jdbc:h2:" + place);
		source.setUser("");
		return source.getConnection();
	}

	/** Has the system put it on the disc: a file must not take the place of another before it is there itself. */
	static void toDisc(Path file) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
			channel.force(true);
		}
	}

	/** Whether something was asked of a table that is not there. */
	static boolean lacksTable(SQLException e) {
		return switch (e.getErrorCode()) {
		case ErrorCode.TABLE_OR_VIEW_NOT_FOUND_1, ErrorCode.TABLE_OR_VIEW_NOT_FOUND_WITH_CANDIDATES_2,
				ErrorCode.TABLE_OR_VIEW_NOT_FOUND_DATABASE_EMPTY_1 -> true;
		default -> false;
		};
	}

	static boolean isInUse(SQLException e) {
		return e.getErrorCode() == ErrorCode.DATABASE_ALREADY_OPEN_1;
	}

	/** In plain words. */
	static String reason(SQLException e) {
		if (KeepableText.STATE.equals(e.getSQLState())) {
			return e.getMessage();
		}
		if (isFull(e)) {
			return Messages.Store_full;
		}
		return switch (e.getErrorCode()) {
		case ErrorCode.DATABASE_ALREADY_OPEN_1 -> Messages.Store_inUse;
		case ErrorCode.FILE_CORRUPTED_1, ErrorCode.FILE_VERSION_ERROR_1, ErrorCode.IO_EXCEPTION_1,
				ErrorCode.IO_EXCEPTION_2 -> Messages.Store_damaged;
		// of tables that were made, or were not, when it was brought up to date
		case ErrorCode.TABLE_OR_VIEW_ALREADY_EXISTS_1, ErrorCode.TABLE_OR_VIEW_NOT_FOUND_1,
				ErrorCode.TABLE_OR_VIEW_NOT_FOUND_DATABASE_EMPTY_1 -> Messages.Store_damaged;
		case ErrorCode.GENERAL_ERROR_1 -> isOfTheFile(e) ? Messages.Store_damaged
				: NLS.bind(Messages.Store_failed, firstLine(e));
		case ErrorCode.DATABASE_IS_READ_ONLY -> Messages.Store_readOnly;
		default -> NLS.bind(Messages.Store_failed, firstLine(e));
		};
	}

	/** H2 says of it only that it could not write; the system's own words are behind that. */
	private static boolean isFull(Throwable e) {
		for (Throwable cause = e; cause != null; cause = cause.getCause()) {
			if (cause instanceof IOException && String.valueOf(cause.getMessage()).matches(FULL)) {
				return true;
			}
		}
		return false;
	}

	/** What is found damaged later, while something is looked up, has no name of its own. */
	private static boolean isOfTheFile(Throwable e) {
		Throwable cause = e;
		while (cause != null && !(cause instanceof MVStoreException)) {
			cause = cause.getCause();
		}
		return cause != null;
	}

	private static String firstLine(SQLException e) {
		String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
		return message.lines().findFirst().orElse("").replaceFirst("; SQL statement:$", "");
	}
}
