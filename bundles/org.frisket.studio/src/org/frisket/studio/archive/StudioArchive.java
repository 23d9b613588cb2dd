package org.frisket.studio.archive;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;

/**
 * A studio's tables and files in one zip file. It is the same whichever database the tables come from or go to, so that a
 * studio moves to a server, or back, by it. The same studio gives the same bytes.
 * <pre>
 * versions.txt          the migrations its tables have been through, one a line
 * tables/NAME.jsonl     see {@link Rows}
 * files/…               what lies in the folder: preferences, limits, fonts, kept fonts, presets
 * </pre>
 */
public final class StudioArchive {

	private static final String VERSIONS = "versions.txt";
	private static final String TABLES = "tables/";
	private static final String ROWS = ".jsonl";

	private final StudioFolder studio;
	private final List<Area> areas;

	/** @param areas all that has tables, each after those it refers to */
	public StudioArchive(StudioFolder studio, List<Area> areas) {
		this.studio = studio;
		this.areas = List.copyOf(areas);
	}

	/** Carries a failure out of a transaction. */
	private static final class Stopped extends Exception {
		private static final long serialVersionUID = 1L;

		Stopped(IOException cause) {
			super(cause);
		}
	}

	/**
	 * Writes all; whole or not at all.
	 *
	 * @param file not in the studio's folder, of which it would be a part itself
	 * @throws IOException with a message for people
	 */
	public void write(Path file) throws IOException {
		if (real(file).startsWith(real(studio.path()))) {
			throw new IOException(NLS.bind(Messages.StudioArchive_inside, file, studio.path()));
		}
		try (Store store = Store.openForReading(studio, areas.toArray(Area[]::new))) {
			WholeFile.write(out -> write(store, out), file);
		}
	}

	/** Where it is, or will be, whatever links lead there. */
	private static Path real(Path file) {
		Path there = file.toAbsolutePath().normalize();
		for (Path folder = there; folder != null; folder = folder.getParent()) {
			try {
				return folder.toRealPath().resolve(folder.relativize(there)).normalize();
			} catch (IOException notThere) {
				// one further up is
			}
		}
		return there;
	}

	private void write(Store store, OutputStream out) throws IOException {
		ZipOutputStream zip = new ZipOutputStream(out);
		try {
			store.<Void, Stopped>read(connection -> {
				try {
					entry(zip, VERSIONS);
					zip.write(String.join("\n", versions(connection)).getBytes(StandardCharsets.UTF_8));
					for (String table : tables()) {
						entry(zip, TABLES + table + ROWS);
						Writer text = new BufferedWriter(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
						Rows.write(connection, table, text);
						text.flush();
					}
					return null;
				} catch (IOException e) {
					throw new Stopped(e);
				}
			});
		} catch (Stopped e) {
			throw (IOException) e.getCause();
		}
		for (Map.Entry<String, Path> each : files().entrySet()) {
			entry(zip, ArchivedFiles.FOLDER + each.getKey());
			Files.copy(each.getValue(), zip);
		}
		zip.finish();
	}

	private static void entry(ZipOutputStream zip, String name) throws IOException {
		ZipEntry entry = new ZipEntry(name);
		// the same studio gives the same bytes
		entry.setTime(0);
		zip.putNextEntry(entry);
	}

	private Set<String> versions(Connection connection) throws SQLException {
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

	/** By their names in the folder, with slashes. */
	private Map<String, Path> files() throws IOException {
		Map<String, Path> files = new TreeMap<>();
		if (Files.isDirectory(studio.path())) {
			try (Stream<Path> all = Files.walk(studio.path())) {
				for (Path file : all.filter(Files::isRegularFile).toList()) {
					String name = studio.path().relativize(file).toString().replace('\\', '/');
					if (ArchivedFiles.isFile(name)) {
						files.put(name, file);
					}
				}
			}
		}
		return files;
	}

	/**
	 * Brings all back: the tables in one transaction, then the files.
	 *
	 * @param replace whether what is in the tables now may be lost
	 * @return how many rows were put in
	 * @throws ArchiveException if the file is no such archive, comes from a newer Frisket, or there is something already
	 * @throws IOException      with a message for people, if the studio cannot be written to
	 */
	public long restore(Path file, boolean replace) throws IOException {
		try (ZipFile zip = new ZipFile(file.toFile())) {
			ZipDirectory.check(file);
			if (zip.getEntry(VERSIONS) == null) {
				throw new ArchiveException(file, Messages.StudioArchive_noZip);
			}
			ArchivedFiles files = ArchivedFiles.checked(zip, file, studio);
			long rows;
			try (Store store = Store.open(studio, areas.toArray(Area[]::new))) {
				rows = store.<Long, Stopped>change(connection -> {
					try {
						return tables(zip, file, connection, replace);
					} catch (IOException e) {
						throw new Stopped(e);
					}
				});
			} catch (Stopped e) {
				throw (IOException) e.getCause();
			}
			files.restore();
			return rows;
		} catch (ZipException e) {
			throw new ArchiveException(file, Messages.StudioArchive_noZip, e);
		} catch (java.nio.file.NoSuchFileException | java.io.FileNotFoundException e) {
			throw new ArchiveException(file, WholeFile.reason(e), e);
		}
	}

	private long tables(ZipFile zip, Path file, Connection connection, boolean replace) throws SQLException, IOException {
		Set<String> ours = versions(connection);
		String theirs = new String(UnpackedStream.of(zip, file, zip.getEntry(VERSIONS)).readAllBytes(), StandardCharsets.UTF_8);
		for (String version : theirs.lines().filter(line -> !line.isBlank()).toList()) {
			if (!ours.contains(version)) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_newer, version));
			}
		}
		List<String> tables = tables();
		List<String> backwards = new ArrayList<>(tables);
		Collections.reverse(backwards);
		if (!replace) {
			refuseFull(file, connection, tables);
		}
		for (String table : backwards) {
			Sql.update(connection, "DELETE FROM " + table);
		}
		long rows = 0;
		for (String table : tables) {
			ZipEntry entry = zip.getEntry(TABLES + table + ROWS);
			if (entry != null) {
				try (InputStream in = UnpackedStream.of(zip, file, entry)) {
					rows += Rows.read(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)), connection, table);
				} catch (ArchiveException e) {
					throw e;
				} catch (IOException e) {
					throw new ArchiveException(file, entry.getName() + ": " + e.getMessage(), e);
				}
			}
		}
		return rows;
	}

	/** Tables that have more in them than those of a new studio. */
	private void refuseFull(Path file, Connection connection, List<String> tables) throws SQLException, IOException {
		for (String table : tables) {
			String count = "SELECT COUNT(*) FROM " + table;
			long here = Sql.first(connection, count, row -> row.getLong(1)).orElse(0L);
			if (here > 1 || here == 1 && !table.endsWith("_counter")) {
				throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_full, studio.path()));
			}
		}
	}
}
