package org.frisket.typography;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

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
}
