package org.frisket.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Frees a file of what was replaced in it; it is only ever added to otherwise. That is done on a copy, which then takes
 * the place of the file at one stroke: whenever the program is killed, the old file or the new one is there as a whole. To
 * be used while nobody has the file open, and nobody can.
 */
final class TidyFile {

	/** In bytes: smaller files are left as they are. */
	static final long SMALL = 4L << 20;
	/** In percent: as long as more of a file is in use, it is left as it is. A file grows to about three times what is in it. */
	private static final int IN_USE = 33;
	/** In bytes: what is left free on the disc while there are copies. */
	private static final long ROOM = 16L << 20;

	/** Those that could not be tidied; this program does not try again. */
	private static final Set<Path> HOPELESS = ConcurrentHashMap.newKeySet();

	private final Path file;
	private final Path copy;

	TidyFile(Path file) {
		this.file = file;
		this.copy = file.resolveSibling("studio-tidy" + H2File.ENDING);
	}

	/** Removes what a program that was killed has left. */
	void sweep() {
		// with what H2 calls the files that it writes
		for (String ending : List.of("", ".tempFile", ".newFile")) {
			try {
				Files.deleteIfExists(copy.resolveSibling(copy.getFileName() + ending));
			} catch (IOException e) {
				// it only takes up room
			}
		}
	}

	/** Whether so little of the file is in use that it is worth while. @param connection to the file */
	boolean isTime(Connection connection) throws SQLException, IOException {
		long size = Files.size(file);
		return size > SMALL && !HOPELESS.contains(file) && inUse(connection) < IN_USE
				&& Files.getFileStore(file).getUsableSpace() > 2 * size + ROOM;
	}

	private static int inUse(Connection connection) throws SQLException {
		return Sql.first(connection,
				"SELECT setting_value FROM information_schema.settings WHERE setting_name = 'info.CHUNKS_FILL_RATE'",
				row -> Integer.parseInt(row.getString(1))).orElse(100);
	}

	/** Does it, or leaves the file as it is: everything works without. */
	void write() throws IOException {
		try {
			Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
			H2File.compact(copy);
			if (!rows(copy).equals(rows(file))) {
				HOPELESS.add(file);
				return;
			}
			H2File.toDisc(copy);
			Files.move(copy, file, StandardCopyOption.ATOMIC_MOVE);
		} catch (SQLException | IOException e) {
			// what is wrong with the file is told to whoever reads that
			HOPELESS.add(file);
		} finally {
			sweep();
		}
	}

	/** How many there are in each table. */
	private static Map<String, Long> rows(Path file) throws SQLException, IOException {
		try (Connection connection = H2File.open(file, true)) {
			List<String> tables = Sql.list(connection,
					"SELECT table_name FROM information_schema.tables WHERE table_schema = CURRENT_SCHEMA", row -> row.getString(1));
			Map<String, Long> rows = new TreeMap<>();
			for (String table : tables) {
				rows.put(table, Sql.first(connection, "SELECT COUNT(*) FROM \"" + table.replace("\"", "\"\"") + '"',
						row -> row.getLong(1)).orElseThrow());
			}
			return rows;
		}
	}
}
