package org.frisket.studio.archive;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Sql;

/**
 * What an archive has of a studio's tables.
 *
 * @param areas all that has tables, each after those it refers to
 */
record ArchivedTables(List<Area> areas) {

	private static final String VERSIONS = "versions.txt";
	private static final String TABLES = "tables/";
	private static final String ROWS = ".jsonl";

	/** Whether it is an archive at all. */
	static boolean areIn(ZipFile zip) {
		return zip.getEntry(VERSIONS) != null;
	}

	static ZipEntry entry(String name) {
		ZipEntry entry = new ZipEntry(name);
		// the same studio gives the same bytes
		entry.setTime(0);
		return entry;
	}

	void write(Connection connection, ZipOutputStream zip, IProgressMonitor monitor) throws SQLException, IOException {
		zip.putNextEntry(entry(VERSIONS));
		zip.write(String.join("\n", versions(connection)).getBytes(StandardCharsets.UTF_8));
		List<String> tables = tables();
		SubMonitor progress = SubMonitor.convert(monitor, tables.size());
		for (String table : tables) {
			zip.putNextEntry(entry(TABLES + table + ROWS));
			Writer text = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
			Rows.write(connection, table, text, progress.split(1));
			text.flush();
		}
	}

	Set<String> versions(Connection connection) throws SQLException {
		Set<String> names = new TreeSet<>(areas.stream().map(Area::name).toList());
		return new TreeSet<>(Sql.list(connection, "SELECT area, number, name FROM store_version",
				row -> names.contains(row.getString(1)) ? "%s %03d-%s".formatted(row.getString(1), row.getInt(2), row.getString(3))
						: "")).tailSet("a");
	}

	private List<String> tables() throws IOException {
		List<String> tables = new ArrayList<>();
		for (Area area : areas) {
			tables.addAll(area.tables());
		}
		return tables;
	}

	/** What is in the tables now. */
	ArchiveContents contents(Connection connection) throws SQLException, IOException {
		return ArchiveContents.of(tables(), table -> Optional.of(ArchiveContents.now(connection, table)));
	}

	/** What an archive has of them. @throws IOException if a line is damaged; the message says which */
	ArchiveContents contents(ZipFile zip, Path file) throws IOException {
		try {
			return ArchiveContents.of(tables(), table -> {
				ZipEntry entry = zip.getEntry(TABLES + table + ROWS);
				return entry == null ? Optional.empty() : Optional.of(read(zip, file, entry, Rows::tally));
			});
		} catch (SQLException never) {
			throw new IllegalStateException(never);
		}
	}

	void refuseNewer(ZipFile zip, Path file, Set<String> ours) throws IOException {
		String theirs = new String(UnpackedStream.of(zip, file, zip.getEntry(VERSIONS)).readAllBytes(), StandardCharsets.UTF_8);
		for (String version : theirs.lines().filter(line -> !line.isBlank()).toList()) {
			if (!ours.contains(version)) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_newer, version));
			}
		}
	}

	/**
	 * Puts all rows in the place of those that are there.
	 *
	 * @return how many there are
	 */
	long restore(ZipFile zip, Path file, Connection connection, IProgressMonitor monitor) throws SQLException, IOException {
		refuseNewer(zip, file, versions(connection));
		List<String> tables = tables();
		List<String> backwards = new ArrayList<>(tables);
		Collections.reverse(backwards);
		for (String table : backwards) {
			Sql.update(connection, "DELETE FROM " + table);
		}
		SubMonitor progress = SubMonitor.convert(monitor, tables.size());
		long rows = 0;
		for (String table : tables) {
			ZipEntry entry = zip.getEntry(TABLES + table + ROWS);
			SubMonitor each = progress.split(1);
			if (entry != null) {
				rows += read(zip, file, entry, in -> Rows.read(in, connection, table, each));
			}
		}
		return rows;
	}

	/** What is made of the lines of a table. */
	private interface Lines<T> {
		T read(BufferedReader in) throws SQLException, IOException;
	}

	private static <T> T read(ZipFile zip, Path file, ZipEntry entry, Lines<T> lines) throws SQLException, IOException {
		try (InputStream in = UnpackedStream.of(zip, file, entry)) {
			return lines.read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
		} catch (ArchiveException e) {
			throw e;
		} catch (IOException e) {
			throw new ArchiveException(file, entry.getName() + ": " + e.getMessage(), e);
		}
	}
}
