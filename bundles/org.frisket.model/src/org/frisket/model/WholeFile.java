package org.frisket.model;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Writes files whole or not at all, and says in plain words why it could not. */
public final class WholeFile {

	/** What a file is to hold. */
	@FunctionalInterface
	public interface Content {

		void writeTo(OutputStream out) throws IOException;
	}

	/** Others may be writing the same file, or have died while they did. */
	private static final int MOST_PARTS = 100;

	/** Nobody takes longer from the last byte of a part to its place as the whole file. */
	private static final Duration LEFT_AFTER = Duration.ofSeconds(10);

	private WholeFile() {
	}

	/** Either the file holds all of the content afterwards, or it is what it was and an exception says why. */
	public static void write(Content content, Path file) throws IOException {
		// A link stays a link: the file it leads to is the one replaced.
		Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
		if (Files.isDirectory(target)) {
			throw new FileSystemException(file.toString(), null, "this is a folder");
		}
		Path folder = target.getParent();
		if (!Files.isDirectory(folder)) {
			throw new FileSystemException(file.toString(), null, "there is no folder " + folder);
		}
		if (Files.exists(target) && !Files.isWritable(target)) {
			throw new FileSystemException(file.toString(), null, "it is write-protected");
		}
		tidy(target);
		Path fresh = part(target);
		try {
			fill(fresh, content);
			keepPermissions(target, fresh);
			move(fresh, target);
		} catch (IOException | RuntimeException | Error e) {
			discard(fresh);
			throw e;
		}
		settle(folder);
	}

	/**
	 * Removes what a program left behind that ended in the middle of writing this file. A part that somebody is writing
	 * now stays, as do the parts of all other files. Trouble with it is passed over.
	 */
	public static void tidy(Path file) {
		Path folder = file.toAbsolutePath().getParent();
		Pattern part = Pattern.compile(Pattern.quote("." + file.getFileName() + ".") + "\\d+\\.part");
		try (Stream<Path> all = Files.list(folder)) {
			all.filter(each -> part.matcher(each.getFileName().toString()).matches()).forEach(WholeFile::discardIfLeft);
		} catch (IOException | UncheckedIOException e) {
			// A folder that cannot be looked into is reported by whoever writes to it.
		}
	}

	private static void discardIfLeft(Path part) {
		if (!Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)) {
			return;
		}
		try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
			Instant written = Files.getLastModifiedTime(part).toInstant();
			if (written.isBefore(Instant.now().minus(LEFT_AFTER)) && channel.tryLock() != null) {
				Files.delete(part);
			}
		} catch (IOException | OverlappingFileLockException e) {
			// In use, gone already, or not ours to remove.
		}
	}

	/** Why a file or a folder cannot be used. */
	public static String reason(IOException e) {
		if (e instanceof NoSuchFileException) {
			return "there is no such file or folder";
		}
		if (e instanceof AccessDeniedException) {
			return "permission is denied";
		}
		if (e instanceof FileSystemException inFile && inFile.getReason() != null) {
			return inFile.getReason();
		}
		return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
	}

	/** A new empty file beside the target, with the permissions of all new files. */
	private static Path part(Path target) throws IOException {
		for (int i = 0;; i++) {
			try {
				return Files.createFile(target.resolveSibling("." + target.getFileName() + "." + i + ".part"));
			} catch (FileAlreadyExistsException e) {
				if (i == MOST_PARTS) {
					throw e;
				}
			}
		}
	}

	private static void fill(Path file, Content content) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
			claim(channel);
			content.writeTo(Channels.newOutputStream(channel));
			channel.force(true);
		}
	}

	/** Tells others that this part is not left behind, where the file system can. */
	private static void claim(FileChannel channel) {
		try {
			channel.tryLock();
		} catch (IOException e) {
			// The time of its last change tells it too.
		}
	}

	private static void keepPermissions(Path from, Path to) throws IOException {
		try {
			Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
		} catch (UnsupportedOperationException | NoSuchFileException e) {
			// Not a POSIX file system, or a new file, which has the permissions of all new files.
		}
	}

	private static void move(Path from, Path to) throws IOException {
		try {
			Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
		} catch (AtomicMoveNotSupportedException e) {
			Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
		}
	}

	private static void discard(Path fresh) {
		try {
			Files.deleteIfExists(fresh);
		} catch (IOException e) {
			// The first trouble is the one to report.
		}
	}

	/** Makes the new name itself lasting, where folders can be opened at all. */
	private static void settle(Path folder) {
		try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
			channel.force(true);
		} catch (IOException e) {
			// Windows cannot; there the move is as lasting as it gets.
		}
	}
}
