package org.frisket.typography.internal.face;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;

/** Reads whole font files, or says why not. */
public final class FontFileReader {

	private FontFileReader() {
	}

	public static byte[] read(Path file) throws UnreadableFontException {
		String font = file.toString();
		try {
			if (!Files.exists(file)) {
				throw new UnreadableFontException(font, "there is no such file");
			}
			if (Files.isDirectory(file)) {
				throw new UnreadableFontException(font, "it is a folder");
			}
			if (!Files.isRegularFile(file)) {
				throw new UnreadableFontException(font, "it is not a regular file");
			}
			checkSize(Files.size(file), font);
			return Files.readAllBytes(file);
		} catch (NoSuchFileException gone) {
			throw new UnreadableFontException(font, "there is no such file");
		} catch (AccessDeniedException denied) {
			throw new UnreadableFontException(font, "reading it is not permitted");
		} catch (IOException broken) {
			throw new UnreadableFontException(font, "reading failed (" + broken.getMessage() + ")");
		}
	}

	public static void checkSize(long size, String font) throws UnreadableFontException {
		if (size > FontFace.LARGEST_FILE) {
			throw new UnreadableFontException(font, "it is too big (" + (size >> 20) + " MB; at most "
					+ (FontFace.LARGEST_FILE >> 20) + " MB are read)");
		}
	}
}
