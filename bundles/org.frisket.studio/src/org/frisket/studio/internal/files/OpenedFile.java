package org.frisket.studio.internal.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

import org.h2.store.fs.FilePath;
import org.h2.store.fs.FilePathWrapper;

/**
 * The files of the disc, as H2 opens them; those that it leaves open when it cannot make anything of them are closed again.
 * Otherwise the lock on a damaged file would be held until the program ends, and no backup could take its place.
 */
public final class OpenedFile extends FilePathWrapper {

	private static final String SYSTEM = "opened";

	/** What this thread has opened since somebody began to listen; null if nobody does. */
	private static final ThreadLocal<List<FileChannel>> OPENED = new ThreadLocal<>();

	static {
		FilePath.register(new OpenedFile());
	}

	/** For H2, which makes one for each file. */
	public OpenedFile() {
		// nothing is known of it yet
	}

	/** Opens a database. */
	public interface Opening {
		/** @param system the name of this file system, which goes before the path */
		Connection in(String system) throws SQLException;
	}

	/** Opens a database, or leaves none of its files open. */
	public static Connection open(Opening opening) throws SQLException {
		List<FileChannel> opened = new ArrayList<>();
		OPENED.set(opened);
		boolean done = false;
		try {
			Connection database = opening.in(SYSTEM);
			done = true;
			return database;
		} finally {
			OPENED.remove();
			if (!done) {
				opened.forEach(OpenedFile::close);
			}
		}
	}

	private static void close(FileChannel file) {
		try {
			file.close();
		} catch (IOException e) {
			// that it could not be opened is told; its lock falls with the program
		}
	}

	@Override
	public String getScheme() {
		return SYSTEM;
	}

	@Override
	public FileChannel open(String mode) throws IOException {
		FileChannel file = super.open(mode);
		if (OPENED.get() != null) {
			OPENED.get().add(file);
		}
		return file;
	}
}
