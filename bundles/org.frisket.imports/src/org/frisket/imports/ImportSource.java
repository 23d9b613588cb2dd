package org.frisket.imports;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The bytes of a file to be read, and what to call it in messages. */
public interface ImportSource {

	/** What a message calls it: the file's name. */
	String name();

	/** In bytes. */
	long size() throws IOException;

	/** A new stream from the first byte on; the caller closes it. */
	InputStream open() throws IOException;

	/** A file. */
	static ImportSource of(Path file) {
		return new ImportSource() {
			@Override
			public String name() {
				return file.toString();
			}

			@Override
			public long size() throws IOException {
				if (Files.isDirectory(file)) {
					throw new FileSystemException(file.toString(), null, "this is a folder");
				}
				return Files.size(file);
			}

			@Override
			public InputStream open() throws IOException {
				return Files.newInputStream(file);
			}
		};
	}

	/** Bytes at hand, such as those of a clipboard. */
	static ImportSource of(String name, byte[] bytes) {
		return new ImportSource() {
			@Override
			public String name() {
				return name;
			}

			@Override
			public long size() {
				return bytes.length;
			}

			@Override
			public InputStream open() {
				return new ByteArrayInputStream(bytes);
			}
		};
	}
}
