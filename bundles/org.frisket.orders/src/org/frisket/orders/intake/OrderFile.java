package org.frisket.orders.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.WholeFile;

/**
 * A file that holds a table of orders.
 *
 * @param name  for people
 * @param bytes of it
 */
public record OrderFile(String name, byte[] bytes) {

	private static final long LARGEST = 256L << 20;

	/** Whether a file is called as tables are. */
	public static boolean isTable(Path file) {
		String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
		return name.endsWith(".csv") || name.endsWith(".tsv");
	}

	/** @throws IOException with a message for people that names the file */
	public static OrderFile of(Path file) throws IOException {
		try {
			if (Files.size(file) <= LARGEST) {
				return new OrderFile(String.valueOf(file.getFileName()), Files.readAllBytes(file));
			}
		} catch (IOException e) {
			throw new IOException(file + ": " + WholeFile.reason(e), e);
		}
		throw new IOException(NLS.bind(Messages.OrderFile_large, file, LARGEST >> 20));
	}
}
