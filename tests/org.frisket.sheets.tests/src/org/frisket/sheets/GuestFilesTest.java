package org.frisket.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Guests of a job, in files of their own. */
class GuestFilesTest {

	@TempDir
	private Path folder;

	@Test
	void guestsAreFoundFromTheHostsFolderAndKeepApart() throws IOException {
		Path hostFile = folder.resolve("gangs/gang.frjob");
		Path one = folder.resolve("jobs/one.frjob");
		Path two = folder.resolve("jobs/two.frjob");
		Files.createDirectories(one.getParent());
		for (Path file : List.of(one, two)) {
			Job job = Shapes.job();
			job.setTitle(file.getFileName().toString());
			JobFile.save(job, file);
		}
		Job host = Shapes.job();
		for (Path file : List.of(one, two)) {
			host.getGuests().add(GuestFiles.guest(host, host.getGuests(), hostFile, JobFile.load(file), file));
		}
		assertEquals(List.of("../jobs/one.frjob", "../jobs/two.frjob"), host.getGuests().stream().map(Guest::getFile).toList());
		GuestFiles.Guests read = GuestFiles.load(host, hostFile);
		assertEquals(Set.of("job-2", "job-3"), read.jobs().keySet());
		assertEquals("two.frjob", read.jobs().get("job-3").getTitle());
		assertEquals(Map.of("job-2", one, "job-3", two), read.files());
		Files.delete(one);
		host.getGuests().get(1).setFile(null);
		List<String> problems = GuestFiles.load(host, hostFile).problems();
		assertEquals(2, problems.size());
		assertTrue(problems.get(0).contains(one.toString()), problems.get(0));
		assertTrue(problems.get(1).contains("two.frjob"), problems.get(1));
	}
}
