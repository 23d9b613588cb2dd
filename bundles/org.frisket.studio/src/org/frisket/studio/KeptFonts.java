package org.frisket.studio;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.frisket.model.WholeFile;
import org.frisket.typography.FontFace;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontFile;

/**
 * The font files that jobs were made with, each under the SHA-256 of its content, so that a reorder years later is set
 * from the same outlines whatever has become of the font since. Nothing is ever overwritten.
 *
 * @param folder need not be there
 */
public record KeptFonts(Path folder) {

	private static final String ENDING = ".font";

	/** @param sha256 in hexadecimal, as jobs have it */
	public boolean has(String sha256) {
		return isDigest(sha256) && Files.isRegularFile(file(sha256));
	}

	/**
	 * Keeps the whole file a face came from. What is kept already is not written again.
	 *
	 * @throws IOException if it cannot be written
	 */
	public void keep(FontFace face) throws IOException {
		if (!has(face.digest())) {
			WholeFile.write(out -> out.write(face.bytes()), file(face.digest()));
		}
	}

	/**
	 * The faces and named instances of a kept file; empty if it is not kept. Whether its content is still what its name
	 * says is for the caller to check.
	 */
	public List<FontEntry> faces(String sha256) {
		try {
			return has(sha256) ? FontFile.of(file(sha256)).faces() : List.of();
		} catch (IOException unreadable) {
			// as if it were not kept: the job says that its font is missing
			return List.of();
		}
	}

	private Path file(String sha256) {
		return folder.resolve(sha256.toLowerCase(Locale.ROOT) + ENDING);
	}

	/** A job may come from anywhere: what it calls a digest must not lead out of the folder. */
	private static boolean isDigest(String text) {
		return text != null && text.matches("[0-9a-fA-F]{64}");
	}
}
