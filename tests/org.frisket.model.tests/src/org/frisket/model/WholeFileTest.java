package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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

	private static Path left(Path folder, String name) throws IOException {
		Path part = Files.writeString(folder.resolve(name), "half a job");
		Files.setLastModifiedTime(part, FileTime.from(Instant.now().minusSeconds(60)));
		return part;
	}

	private static Set<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
		}
	}

	@Test
	void partsThatACrashLeftAreGoneAfterTheNextSaveAndThoseOfOthersStay(@TempDir Path folder) throws IOException {
		Path file = folder.resolve("a.frjob");
		left(folder, ".a.frjob.0.part");
		left(folder, ".a.frjob.17.part");
		left(folder, ".b.frjob.0.part");
		left(folder, ".a.frjob.part");
		left(folder, ".a.frjob.x.part");
		left(folder, "a.frjob.0.part");
		WholeFile.write(out -> out.write('n'), file);
		assertEquals(Set.of(".a.frjob.part", ".a.frjob.x.part", ".b.frjob.0.part", "a.frjob", "a.frjob.0.part"),
				names(folder));
	}

	@Test
	void namesWithSignsOfPatternsAreTakenAsTheyAre(@TempDir Path folder) throws IOException {
		left(folder, ".tag (1) a+b.frjob.0.part");
		left(folder, ".tag (1) aab.frjob.0.part");
		WholeFile.tidy(folder.resolve("tag (1) a+b.frjob"));
		assertEquals(Set.of(".tag (1) aab.frjob.0.part"), names(folder));
	}

	@Test
	void partThatIsBeingWrittenStays(@TempDir Path folder) throws IOException {
		Path file = folder.resolve("a.frjob");
		WholeFile.write(out -> {
			out.write('n');
			// long ago, as on a slow disk: it is claimed all the same
			Files.setLastModifiedTime(folder.resolve(".a.frjob.0.part"), FileTime.from(Instant.EPOCH));
			WholeFile.tidy(file);
			assertEquals(Set.of(".a.frjob.0.part"), names(folder));
		}, file);
		assertEquals("n", Files.readString(file));
	}

	@Test
	void partOfThisVeryMomentStays(@TempDir Path folder) throws IOException {
		Files.writeString(folder.resolve(".a.frjob.0.part"), "between its last byte and its place");
		WholeFile.tidy(folder.resolve("a.frjob"));
		assertEquals(Set.of(".a.frjob.0.part"), names(folder));
	}

	@Test
	void folderThatIsNotThereIsNoTrouble(@TempDir Path folder) {
		WholeFile.tidy(folder.resolve("gone").resolve("a.frjob"));
	}
}
