package org.frisket.typography.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;

import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.internal.source.FileListing;

/**
 * A font file as it was when it was looked at; the same size and time of change are taken for the same content.
 *
 * @param size     in bytes
 * @param modified in milliseconds of the epoch
 */
public record FontFile(Path path, long size, long modified) {

	public static FontFile of(Path path) throws IOException {
		BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
		return new FontFile(path, attributes.size(), attributes.lastModifiedTime().toMillis());
	}

	/** Each face of a collection, and of a variable font each named instance; those that cannot be read are left out. */
	public List<FontEntry> faces() {
		return FileListing.read(path).fonts();
	}

	/**
	 * The face of a file that goes by a name: a collection holds several, and a variable font has named instances.
	 *
	 * @param family may be null if it is not known
	 * @param style  null for the plain one
	 * @return the first face if none goes by that name
	 */
	public static FontFace read(Path path, String family, String style) throws UnreadableFontException {
		FontFace first = FontFace.read(path);
		if (family == null || first.family().equals(family) && (style == null || first.style().equals(style))) {
			return first;
		}
		Optional<FontEntry> named = FontLibrary.named(FileListing.read(path).fonts(), family, style);
		return named.isPresent() ? named.get().open() : first;
	}
}
