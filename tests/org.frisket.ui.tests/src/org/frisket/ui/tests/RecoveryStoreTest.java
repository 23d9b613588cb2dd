package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.frisket.model.Job;
import org.frisket.model.JobFile;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.files.Ago;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.RecoveryStore;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Copies of unsaved work, without a window. */
class RecoveryStoreTest {

	private final Job job = new SampleJob().job;
	private Path folder;
	private RecoveryStore store;
	private Unsaved unsaved;

	@BeforeEach
	void makeFolder() throws IOException {
		folder = Files.createTempDirectory("recovery");
		store = new RecoveryStore(folder.resolve("unsaved"));
		Path original = Files.writeString(folder.resolve("ferry =: plate ü.frjob"), "earlier");
		unsaved = Unsaved.of(original, FileStamp.of(original));
	}

	@AfterEach
	void removeFolder() throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
				Files.delete(file);
			}
		}
	}

	@Test
	void anotherStoreOnTheSameFolderFindsWhatWasKept() throws IOException {
		store.write(unsaved, job);
		store.write(Unsaved.untitled(3), job);
		// the first one's program is gone; all that is left are the files
		RecoveryStore next = new RecoveryStore(folder.resolve("unsaved"));
		assertEquals(2, next.all().size());
		assertTrue(next.all().containsAll(List.of(unsaved, Unsaved.untitled(3))), next.all()::toString);
		assertEquals(Optional.of(unsaved), next.find(unsaved.original().orElseThrow()));
		assertEquals(text(job), text(next.read(unsaved).orElseThrow()));
	}

	@Test
	void jobKeptElsewhereIsFoundByItsPlaceWithWhatItWasMadeOf() throws IOException {
		Unsaved placed = Unsaved.at("book:12 /studio", "7");
		byte[] base = JobFile.toBytes(job);
		job.setTitle("Ferry plate, second try");
		store.write(placed, job, base);
		RecoveryStore next = new RecoveryStore(folder.resolve("unsaved"));
		assertEquals(Optional.of(placed), next.findAt("book:12 /studio"));
		assertEquals("7", next.findAt("book:12 /studio").orElseThrow().mark());
		assertEquals(Optional.empty(), next.findAt("book:1 /studio"));
		assertEquals("Ferry plate", JobFile.load(next.base(placed), "base").getTitle());
		assertEquals("Ferry plate, second try", next.read(placed).orElseThrow().getTitle());
		next.remove(placed);
		assertEquals(0, next.base(placed).length);
	}

	@Test
	void laterCopyTakesThePlaceOfTheEarlier() throws IOException {
		store.write(unsaved, job);
		job.setTitle("Ferry plate, second try");
		store.write(unsaved, job);
		assertEquals(1, store.all().size());
		assertEquals("Ferry plate, second try", store.read(unsaved).orElseThrow().getTitle());
	}

	@Test
	void removedCopyLeavesNothingBehind() throws IOException {
		store.write(unsaved, job);
		store.remove(unsaved);
		store.remove(unsaved);
		assertEquals(List.of(), store.all());
		assertEquals(Optional.empty(), store.read(unsaved));
		try (Stream<Path> left = Files.list(folder.resolve("unsaved"))) {
			assertEquals(List.of(), left.toList());
		}
	}

	@Test
	void folderThatIsNotThereHoldsNothing() throws IOException {
		assertEquals(List.of(), store.all());
		assertEquals(Optional.empty(), store.find(Path.of("/a/b.frjob")));
	}

	@Test
	void damagedCopyIsSetAsideAndNotOfferedAgain() throws IOException {
		store.write(unsaved, job);
		Path copy;
		try (Stream<Path> files = Files.list(folder.resolve("unsaved"))) {
			copy = files.filter(file -> file.toString().endsWith(JobFile.ENDING)).findFirst().orElseThrow();
		}
		Files.writeString(copy, "<half");
		assertThrows(IOException.class, () -> store.read(unsaved));
		assertEquals(List.of(), store.all());
		assertEquals(Optional.empty(), store.read(unsaved));
	}

	@Test
	void strayFilesAreLeftAlone() throws IOException {
		store.write(unsaved, job);
		Files.writeString(folder.resolve("unsaved/stray.about"), "number=x");
		Files.writeString(folder.resolve("unsaved/.something.0.part"), "half");
		assertEquals(List.of(unsaved), store.all());
	}

	@Test
	void wordsForHowLongAgoNeedChangingEverMoreSeldom() {
		assertEquals(new Ago("just now", Duration.ofSeconds(7)), Ago.of(Duration.ofSeconds(3)));
		assertEquals(new Ago("10 s ago", Duration.ofSeconds(8)), Ago.of(Duration.ofSeconds(12)));
		assertEquals(new Ago("50 s ago", Duration.ofSeconds(1)), Ago.of(Duration.ofMillis(59_900)));
		assertEquals(new Ago("1 min ago", Duration.ofSeconds(60)), Ago.of(Duration.ofSeconds(60)));
		assertEquals(new Ago("2 h ago", Duration.ofSeconds(3599)), Ago.of(Duration.ofSeconds(7201)));
		assertEquals("just now", Ago.of(Duration.ofSeconds(-5)).text());
	}

	private static String text(Job job) throws IOException {
		return OpenBench.text(job);
	}
}
