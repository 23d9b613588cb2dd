package org.frisket.typography.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A file of the Unicode Character Database's own tests, as Debian's package unicode-data has it. */
public final class UnicodeTestFile {

	/** The version whose tests are run. The rules that are tested may be of another one. */
	public static final String VERSION = "15.0.0";

	private static final Path FOLDER = Path.of("/usr/share/unicode");

	private UnicodeTestFile() {
	}

	/** Lines with their comments, but without those that are only comment. */
	public static List<String> lines(String file) throws IOException {
		Path path = FOLDER.resolve(file);
		assumeTrue(Files.isReadable(path), () -> path + " is not installed");
		List<String> lines = Files.readAllLines(path);
		String name = path.getFileName().toString();
		assertEquals("# " + name.substring(0, name.indexOf('.')) + "-" + VERSION + ".txt", lines.get(0));
		return lines.stream().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
	}

	public static String withoutComment(String line) {
		int comment = line.indexOf('#');
		return (comment < 0 ? line : line.substring(0, comment)).strip();
	}
}
