package org.frisket.orders.work.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.osgi.util.NLS;
import org.frisket.orders.work.StudioAreas;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.archive.ArchiveException;
import org.frisket.studio.archive.StudioArchive;

/**
 * A studio with all that has tables, and its folder, as one file. All of it may wait for other desks, so it is none for
 * the screen's thread. Messages of exceptions are for people; monitors may be null.
 */
public final class StudioBackup {

	private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm", Locale.ROOT);

	private final StudioFolder studio;
	private final Clock clock;
	private final StudioArchive archive;

	public StudioBackup(StudioFolder studio) {
		this(studio, Clock.systemDefaultZone());
	}

	/** @param clock by which files are named, in its zone */
	public StudioBackup(StudioFolder studio, Clock clock) {
		this.studio = studio;
		this.clock = clock;
		archive = new StudioArchive(studio, StudioAreas.ALL);
	}

	/**
	 * Writes all; whole or not at all.
	 *
	 * @param file not in the studio's folder
	 * @throws OperationCanceledException if it was called off
	 */
	public void write(Path file, IProgressMonitor monitor) throws IOException {
		archive.write(file, monitor);
	}

	/** A name for a backup made now. */
	public String name() {
		return called("backup", 0);
	}

	/** What is here now. */
	public BookContents here() throws IOException {
		return BookContents.of(archive.contents());
	}

	/**
	 * What a backup has in it. Nothing is changed.
	 *
	 * @throws ArchiveException           if it is none, is damaged, or comes from a newer Frisket
	 * @throws OperationCanceledException if it was called off
	 */
	public BookContents in(Path file, IProgressMonitor monitor) throws IOException {
		return BookContents.of(archive.contents(file, monitor));
	}

	/** Where all that is here now would be kept, beside the studio's folder. */
	public Path beforeRestore() {
		Path folder = studio.path().toAbsolutePath().normalize();
		for (int number = 0;; number++) {
			Path file = folder.resolveSibling(called("before-restore", number));
			if (!Files.exists(file)) {
				return file;
			}
		}
	}

	private String called(String what, int number) {
		Path name = studio.path().toAbsolutePath().normalize().getFileName();
		return (name == null ? "studio" : name) + "-" + what + "-" + MINUTE.format(LocalDateTime.now(clock))
				+ (number == 0 ? "" : "-" + number) + ".zip";
	}

	/**
	 * Brings a backup back. What is here is kept in a file first; if it cannot be, nothing is changed.
	 *
	 * @param replace whether it may come in the place of something
	 * @throws ArchiveException           if it is no backup, is damaged, comes from a newer Frisket, or there is something
	 *                                    here and it may not
	 * @throws OperationCanceledException if it was called off; all is as it was then
	 */
	public Restored restore(Path file, boolean replace, IProgressMonitor monitor) throws IOException {
		// what comes into an empty one between now and then is refused
		Optional<Path> kept = replace && !here().fresh() ? Optional.of(beforeRestore()) : Optional.empty();
		try {
			return new Restored(archive.restore(file, kept.isPresent(), kept, monitor), kept);
		} catch (IOException e) {
			if (kept.isPresent() && Files.exists(kept.get())) {
				throw new IOException(NLS.bind(Messages.StudioBackup_kept, e.getMessage(), kept.get()), e);
			}
			throw e;
		}
	}
}
