package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

	@Test
	void failureHalfwayLeavesTheOldFileAndNothingElse(@TempDir Path folder) throws IOException {
		Path file = Files.writeString(folder.resolve("a.frjob"), "old");
		IOException e = assertThrows(IOException.class, () -> WholeFile.write(out -> {
			out.write(new byte[100]);
			throw new IOException("no space left");
		}, file));
		assertEquals("no space left", e.getMessage());
		assertEquals("old", Files.readString(file));
		try (Stream<Path> files = Files.list(folder)) {
			assertEquals(List.of(file), files.toList());
		}
	}

	@Test
	void oldFileStaysUntilTheNewOneIsComplete(@TempDir Path folder) throws IOException {
		Path file = Files.writeString(folder.resolve("a.frjob"), "old");
		WholeFile.write(out -> {
			out.write('n');
			assertEquals("old", Files.readString(file));
			out.write(new byte[] { 'e', 'w' });
		}, file);
		assertEquals("new", Files.readString(file));
	}
}
