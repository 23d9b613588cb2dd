package org.frisket.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobSavingTest {

	@TempDir
	private Path folder;

	private static List<String> names(Path folder) throws IOException {
		try (Stream<Path> files = Files.list(folder)) {
			return files.map(file -> file.getFileName().toString()).sorted().toList();
		}
	}

	@Test
	void savedFileHoldsTheBytesAndNothingElseIsLeft() throws IOException {
		Path file = folder.resolve("banner.frjob");
		JobFile.save(Samples.banner(), file);
		assertArrayEquals(JobFile.toBytes(Samples.banner()), Files.readAllBytes(file));
		JobFile.save(JobFile.load(file), file);
		assertArrayEquals(JobFile.toBytes(Samples.banner()), Files.readAllBytes(file));
		assertEquals(List.of("banner.frjob"), names(folder));
	}

	@Test
	void missingFolderIsNamed() {
		Path file = folder.resolve("none").resolve("banner.frjob");
		UnwritableJobException e = assertThrows(UnwritableJobException.class,
				() -> JobFile.save(Samples.banner(), file));
		assertEquals("could not write " + file + ": there is no folder " + file.getParent(), e.getMessage());
	}

	@Test
	void folderInPlaceOfTheFileStays() throws IOException {
		Path file = Files.createDirectory(folder.resolve("banner.frjob"));
		UnwritableJobException e = assertThrows(UnwritableJobException.class,
				() -> JobFile.save(Samples.banner(), file));
		assertEquals("could not write " + file + ": this is a folder", e.getMessage());
		assertEquals(List.of("banner.frjob"), names(folder));
		assertTrue(Files.isDirectory(file));
	}

	@Test
	void jobThatCannotBeWrittenLeavesTheOldFile() throws IOException {
		Path file = Files.writeString(folder.resolve("banner.frjob"), "old");
		Job job = Samples.banner();
		job.setTitle("\u0001");
		UnwritableJobException e = assertThrows(UnwritableJobException.class, () -> JobFile.save(job, file));
		assertTrue(e.getMessage().startsWith("could not write " + file + ": the title of "), e.getMessage());
		assertEquals("old", Files.readString(file));
		assertEquals(List.of("banner.frjob"), names(folder));
	}

	/** The longest name a file may have leaves no room for the name of the new one beside it. */
	@Test
	void failureBesideTheFileLeavesTheOldOne() throws IOException {
		Path file = Files.writeString(folder.resolve("b".repeat(249) + ".frjob"), "old");
		assertThrows(UnwritableJobException.class, () -> JobFile.save(Samples.banner(), file));
		assertEquals("old", Files.readString(file));
		assertEquals(1, names(folder).size());
	}

	@Test
	void leftoversOfACrashDoNotHinder() throws IOException {
		Files.writeString(folder.resolve(".banner.frjob.0.part"), "half");
		Path file = folder.resolve("banner.frjob");
		JobFile.save(Samples.banner(), file);
		assertArrayEquals(JobFile.toBytes(Samples.banner()), Files.readAllBytes(file));
		assertEquals("half", Files.readString(folder.resolve(".banner.frjob.0.part")));
	}

	@Test
	void permissionsAndLinksStay() throws IOException {
		assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
		Path file = Files.writeString(folder.resolve("banner.frjob"), "old");
		Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r--"));
		Path link = Files.createSymbolicLink(folder.resolve("link.frjob"), file.getFileName());
		JobFile.save(Samples.banner(), link);
		assertTrue(Files.isSymbolicLink(link));
		assertEquals("rw-rw-r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
		assertArrayEquals(JobFile.toBytes(Samples.banner()), Files.readAllBytes(file));
	}
}
