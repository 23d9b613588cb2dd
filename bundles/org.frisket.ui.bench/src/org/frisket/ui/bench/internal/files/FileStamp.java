package org.frisket.ui.bench.internal.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/** What tells whether somebody else has written a file since. */
public record FileStamp(FileTime modified, long size) {

	/** No file. */
	public static final FileStamp NONE = new FileStamp(FileTime.fromMillis(0), -1);

	public static FileStamp of(Path path) {
		try {
			BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
			return new FileStamp(attributes.lastModifiedTime(), attributes.size());
		} catch (IOException e) {
			return NONE;
		}
	}

	public boolean isFile() {
		return !equals(NONE);
	}
}
