package org.frisket.ui.bench.internal.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.WholeFile;

/**
 * A folder with copies of jobs that are not saved. Each copy is written whole or not at all; beside it stands what job
 * it is of, and for one that is kept elsewhere than in a file what it was like there. A copy that is there when the
 * program starts was left by one that ended without closing its jobs. Safe for use by several threads.
 */
public final class RecoveryStore {

	private static final String ABOUT = ".about"; //$NON-NLS-1$
	private static final String BASE = ".base"; //$NON-NLS-1$
	private static final String DAMAGED = ".damaged"; //$NON-NLS-1$
	private static final String PATH = "path"; //$NON-NLS-1$
	private static final String MODIFIED = "modified"; //$NON-NLS-1$
	private static final String SIZE = "size"; //$NON-NLS-1$
	private static final String NUMBER = "number"; //$NON-NLS-1$
	private static final String PLACE = "place"; //$NON-NLS-1$
	private static final String MARK = "mark"; //$NON-NLS-1$

	private final Path folder;

	/** @param folder made when first written to */
	public RecoveryStore(Path folder) {
		this.folder = folder;
	}

	/** Keeps a copy of a job, in place of an earlier one. */
	public void write(Unsaved unsaved, Job job) throws IOException {
		write(unsaved, job, new byte[0]);
	}

	/** The same. @param base the job as it was taken out of where it is kept; empty for none */
	public synchronized void write(Unsaved unsaved, Job job, byte[] base) throws IOException {
		Files.createDirectories(folder);
		// the description first: a copy without one could not be given back
		if (base.length > 0 && !Arrays.equals(base, base(unsaved))) {
			WholeFile.write(out -> out.write(base), base(unsaved.id()));
		}
		Properties about = properties(unsaved);
		WholeFile.write(out -> about.store(out, null), about(unsaved.id()));
		JobFile.save(job, copy(unsaved.id()));
	}

	/** Drops the copy of a job that is saved or closed; does nothing if there is none. */
	public synchronized void remove(Unsaved unsaved) throws IOException {
		Files.deleteIfExists(copy(unsaved.id()));
		Files.deleteIfExists(about(unsaved.id()));
		Files.deleteIfExists(base(unsaved.id()));
	}

	/** The job as it was when it was taken out of where it is kept; empty if that is not known. */
	public synchronized byte[] base(Unsaved unsaved) throws IOException {
		Path base = base(unsaved.id());
		return Files.exists(base) ? Files.readAllBytes(base) : new byte[0];
	}

	/** The job as it was kept; empty if there is no copy. A copy that cannot be read is set aside. */
	public synchronized Optional<Job> read(Unsaved unsaved) throws IOException {
		Path copy = copy(unsaved.id());
		if (!Files.exists(copy)) {
			return Optional.empty();
		}
		try {
			return Optional.of(JobFile.load(copy));
		} catch (IOException e) {
			Files.move(copy, folder.resolve(unsaved.id() + DAMAGED), StandardCopyOption.REPLACE_EXISTING);
			throw e;
		}
	}

	/** What a copy of this file's job says of it; empty if there is no copy. */
	public Optional<Unsaved> find(Path original) throws IOException {
		return find(Unsaved.of(original, FileStamp.NONE).id());
	}

	/** The same of a job that is kept elsewhere. */
	public Optional<Unsaved> findAt(String place) throws IOException {
		return find(Unsaved.at(place, "").id()); //$NON-NLS-1$
	}

	/** The same of the job of a copy. */
	public Optional<Unsaved> find(Unsaved like) throws IOException {
		return find(like.id());
	}

	private Optional<Unsaved> find(String id) throws IOException {
		return all().stream().filter(unsaved -> unsaved.id().equals(id)).findFirst();
	}

	/** All jobs of which there is a copy, in the order of their names. */
	public synchronized List<Unsaved> all() throws IOException {
		List<Unsaved> all = new ArrayList<>();
		if (Files.isDirectory(folder)) {
			for (Path about : abouts()) {
				Unsaved unsaved = unsaved(about);
				if (unsaved != null && Files.exists(copy(unsaved.id()))) {
					all.add(unsaved);
				}
			}
		}
		return all;
	}

	private List<Path> abouts() throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.filter(file -> file.toString().endsWith(ABOUT)).sorted().toList();
		}
	}

	private Path copy(String id) {
		return folder.resolve(id + JobFile.ENDING);
	}

	private Path base(String id) {
		return folder.resolve(id + BASE);
	}

	private Path about(String id) {
		return folder.resolve(id + ABOUT);
	}

	private static Properties properties(Unsaved unsaved) {
		Properties about = new Properties();
		unsaved.original().ifPresent(path -> about.setProperty(PATH, path.toString()));
		about.setProperty(MODIFIED, unsaved.stamp().modified().toInstant().toString());
		about.setProperty(SIZE, Long.toString(unsaved.stamp().size()));
		about.setProperty(NUMBER, Integer.toString(unsaved.number()));
		about.setProperty(PLACE, unsaved.place());
		about.setProperty(MARK, unsaved.mark());
		return about;
	}

	/** Null if it is not one of ours. */
	private static Unsaved unsaved(Path file) throws IOException {
		Properties about = new Properties();
		try (InputStream in = Files.newInputStream(file)) {
			about.load(in);
			FileStamp stamp = new FileStamp(FileTime.from(Instant.parse(about.getProperty(MODIFIED, ""))), //$NON-NLS-1$
					Long.parseLong(about.getProperty(SIZE)));
			return new Unsaved(Optional.ofNullable(about.getProperty(PATH)).map(Path::of), stamp,
					Integer.parseInt(about.getProperty(NUMBER)), about.getProperty(PLACE, ""), //$NON-NLS-1$
					about.getProperty(MARK, "")); //$NON-NLS-1$
		} catch (IllegalArgumentException | DateTimeException e) {
			return null;
		}
	}
}
