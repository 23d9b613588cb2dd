package org.frisket.prepare.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.model.Picture;
import org.frisket.prepare.pictures.LinkedPictures;
import org.frisket.prepare.pictures.PictureSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinkedPicturesTest {

	@TempDir
	private Path folder;
	private final Job job = Jobs.create("HL-8", "Ferry banner");
	private final Picture picture = Jobs.addPicture(Jobs.addLayer(job, "Photo"), null, null, 40, 20);

	private Picture linked(String link) {
		JobHome.set(job, folder.resolve("jobs/ferry.frjob"));
		picture.setLink(link);
		return picture;
	}

	@Test
	void linksLeadToTheSameFilesFromElsewhere() {
		Path file = PictureSource.file(linked("art/quay.pdf#page=2")).orElseThrow();
		assertSame(job, LinkedPictures.at(job, folder.resolve("jobs/other.frjob")));
		Job copy = LinkedPictures.at(job, folder.resolve("away/2026/ferry.frjob"));
		assertNotSame(job, copy);
		assertEquals("art/quay.pdf#page=2", picture.getLink());
		Picture there = (Picture) Jobs.elements(copy).get(0);
		assertEquals("../../jobs/art/quay.pdf#page=2", there.getLink());
		JobHome.set(copy, folder.resolve("away/2026/ferry.frjob"));
		assertEquals(file, PictureSource.file(there).orElseThrow());
		assertEquals(2, PictureSource.page(there));
	}

	@Test
	void whatIsThereIsTakenInAndWhatIsMissingIsTold() throws IOException {
		Path file = Files.createDirectories(folder.resolve("jobs")).resolve("quay.png");
		linked("quay.png");
		List<String> left = LinkedPictures.keep(job);
		assertEquals(1, left.size());
		assertTrue(left.get(0).contains(file.toString()), left.get(0));
		assertEquals(file.toString(), picture.getLink(), "found from anywhere when it comes back");
		Files.write(file, new byte[] { 1, 2, 3 });
		assertEquals(List.of(), LinkedPictures.keep(job));
		assertNotNull(picture.getImage(), "even if it is no picture");
		assertEquals(null, picture.getLink());
	}

	private Guest guest(String file) {
		JobHome.set(job, folder.resolve("jobs/ferry.frjob"));
		Guest guest = FrisketFactory.INSTANCE.createGuest();
		guest.setJob("guest");
		guest.setFile(file);
		job.getGuests().add(guest);
		return guest;
	}

	@Test
	void guestsAreFoundFromElsewhereToo() {
		Guest guest = guest("tags.frjob");
		guest(null);
		guest(folder.resolve("fixed.frjob").toString());
		assertSame(job, LinkedPictures.at(job, folder.resolve("jobs/other.frjob")));
		Job copy = LinkedPictures.at(job, folder.resolve("away/2026/ferry.frjob"));
		assertEquals("tags.frjob", guest.getFile());
		assertEquals(Arrays.asList("../../jobs/tags.frjob", null, folder.resolve("fixed.frjob").toString()),
				copy.getGuests().stream().map(Guest::getFile).toList());
		assertEquals(List.of(), LinkedPictures.keep(job));
		assertEquals(folder.resolve("jobs/tags.frjob").toString(), guest.getFile(), "a store lies beside no file");
	}
}
