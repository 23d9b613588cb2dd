package org.frisket.ui.bench.internal.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.DateTimeException;
import java.time.Instant;

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

	/** What {@link #text} says; {@link #NONE} if it says none. */
	public static FileStamp of(String text) {
		int space = text.indexOf(' ');
		try {
			return space < 0 ? NONE
					: new FileStamp(FileTime.from(Instant.parse(text.substring(0, space))),
							Long.parseLong(text.substring(space + 1)));
		} catch (DateTimeException | NumberFormatException e) {
			return NONE;
		}
	}

	/** The same in writing. */
	public String text() {
		return modified.toInstant() + " " + size; //$NON-NLS-1$
	}

	public boolean isFile() {
		return !equals(NONE);
	}
}
