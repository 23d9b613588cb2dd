package org.frisket.studio.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Area;
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

	private final StudioFolder studio;
	private final List<Area> areas;
	private final ArchivedTables tables;

	/** @param areas all that has tables, each after those it refers to */
	public StudioArchive(StudioFolder studio, List<Area> areas) {
		this.studio = studio;
		this.areas = List.copyOf(areas);
		tables = new ArchivedTables(this.areas);
	}

	/** The same without anybody who looks. */
	public void write(Path file) throws IOException {
		write(file, null);
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
	 * @param file    not in the studio's folder, of which it would be a part itself
	 * @param monitor null if nobody looks
	 * @throws IOException                with a message for people
	 * @throws OperationCanceledException if it was called off
	 */
	public void write(Path file, IProgressMonitor monitor) throws IOException {
		SubMonitor progress = SubMonitor.convert(monitor);
		refuseInside(file);
		try (Store store = Store.openForReading(studio, areas.toArray(Area[]::new))) {
			try {
				store.<Void, Stopped>read(connection -> {
					write(connection, file, progress);
					return null;
				});
			} catch (Stopped e) {
				throw (IOException) e.getCause();
			}
		}
	}

	private void refuseInside(Path file) throws IOException {
		if (real(file).startsWith(real(studio.path()))) {
			throw new IOException(NLS.bind(Messages.StudioArchive_inside, file, studio.path()));
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

	private void write(Connection connection, Path file, IProgressMonitor monitor) throws SQLException, Stopped {
		try {
			WholeFile.write(out -> {
				try {
					write(connection, out, monitor);
				} catch (SQLException e) {
					throw new IOException(e);
				}
			}, file);
		} catch (IOException e) {
			if (e.getCause() instanceof SQLException database) {
				throw database;
			}
			throw new Stopped(e);
		}
	}

	private void write(Connection connection, OutputStream out, IProgressMonitor monitor) throws SQLException, IOException {
		Map<String, Path> files = ArchivedFiles.of(studio);
		SubMonitor progress = SubMonitor.convert(monitor, 1 + files.size());
		ZipOutputStream zip = new ZipOutputStream(out);
		tables.write(connection, zip, progress.split(1));
		for (Map.Entry<String, Path> each : files.entrySet()) {
			progress.split(1);
			zip.putNextEntry(ArchivedTables.entry(ArchivedFiles.FOLDER + each.getKey()));
			Files.copy(each.getValue(), zip);
		}
		zip.finish();
	}

	/** What is in the tables now. @throws IOException with a message for people */
	public ArchiveContents contents() throws IOException {
		try (Store store = Store.openForReading(studio, areas.toArray(Area[]::new))) {
			return store.<ArchiveContents, Stopped>read(connection -> {
				try {
					return tables.contents(connection);
				} catch (IOException e) {
					throw new Stopped(e);
				}
			});
		} catch (Stopped e) {
			throw (IOException) e.getCause();
		}
	}

	/**
	 * What a backup has in it. Nothing is changed.
	 *
	 * @param monitor null if nobody looks
	 * @throws ArchiveException           if it could not be brought back for what it is itself, as {@link #restore} says
	 * @throws IOException                with a message for people
	 * @throws OperationCanceledException if it was called off
	 */
	public ArchiveContents contents(Path file, IProgressMonitor monitor) throws IOException {
		return with(file, monitor, (zip, files) -> {
			try (Store store = Store.openForReading(studio, areas.toArray(Area[]::new))) {
				Set<String> ours = store.read(tables::versions);
				tables.refuseNewer(zip, file, ours);
			}
			return tables.contents(zip, file);
		});
	}

	/** The same without anybody who looks. */
	public long restore(Path file, boolean replace) throws IOException {
		return restore(file, replace, Optional.empty(), null);
	}

	/**
	 * Brings all back: the tables in one transaction, then the files.
	 *
	 * @param replace whether what is in the tables now may be lost
	 * @param before  where to keep all that is there now, before any of it is lost; outside the studio's folder
	 * @param monitor null if nobody looks; when the tables are back it can no longer be called off
	 * @return how many rows were put in
	 * @throws ArchiveException           if the file is no such archive, comes from a newer Frisket, or there is something
	 *                                    already
	 * @throws IOException                with a message for people, if the studio cannot be written to
	 * @throws OperationCanceledException if it was called off; all is as it was then
	 */
	public long restore(Path file, boolean replace, Optional<Path> before, IProgressMonitor monitor) throws IOException {
		SubMonitor progress = SubMonitor.convert(monitor, before.isPresent() ? 3 : 2);
		if (before.isPresent()) {
			refuseInside(before.get());
		}
		return with(file, progress.split(1), (zip, files) -> {
			long rows;
			try (Store store = Store.open(studio, areas.toArray(Area[]::new))) {
				rows = store.<Long, Stopped>change(connection -> {
					try {
						// a change of another desk that comes between has all of this done again
						progress.setWorkRemaining(before.isPresent() ? 2 : 1);
						if (before.isPresent()) {
							write(connection, before.get(), progress.split(1));
						}
						if (!replace && !tables.contents(connection).isNew()) {
							throw new ArchiveException(file, NLS.bind(Messages.StudioArchive_full, studio.path()));
						}
						return tables.restore(zip, file, connection, progress.split(1));
					} catch (IOException e) {
						throw new Stopped(e);
					}
				});
			} catch (Stopped e) {
				forget(before);
				throw (IOException) e.getCause();
			} catch (OperationCanceledException e) {
				forget(before);
				throw e;
			}
			files.restore();
			return rows;
		});
	}

	/** Nothing was lost, so nothing need be kept. A database that fails may yet have changed something. */
	private static void forget(Optional<Path> before) throws IOException {
		if (before.isPresent()) {
			Files.deleteIfExists(before.get());
		}
	}

	/** What is done with an archive. */
	private interface Use<T> {
		T of(ZipFile zip, ArchivedFiles files) throws IOException;
	}

	private <T> T with(Path file, IProgressMonitor monitor, Use<T> use) throws IOException {
		try (ZipFile zip = new ZipFile(file.toFile())) {
			ZipDirectory.check(file);
			if (!ArchivedTables.areIn(zip)) {
				throw new ArchiveException(file, Messages.StudioArchive_noZip);
			}
			return use.of(zip, ArchivedFiles.checked(zip, file, studio, monitor));
		} catch (ZipException e) {
			throw new ArchiveException(file, Messages.StudioArchive_noZip, e);
		} catch (java.nio.file.NoSuchFileException | java.io.FileNotFoundException e) {
			throw new ArchiveException(file, WholeFile.reason(e), e);
		}
	}
}
