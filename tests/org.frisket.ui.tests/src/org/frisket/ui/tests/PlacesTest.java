package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IElementFactory;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.frisket.model.JobFile;
import org.frisket.ui.bench.JobInput;
import org.frisket.ui.bench.JobPlace;
import org.frisket.ui.bench.PlaceInput;
import org.frisket.ui.bench.UntitledInput;
import org.frisket.ui.bench.internal.files.FileStamp;
import org.frisket.ui.bench.internal.files.Unsaved;
import org.frisket.ui.bench.internal.places.Copies;
import org.frisket.ui.bench.internal.places.FilePlace;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Where jobs are kept that are none of an order book. */
class PlacesTest {

	private Path folder;
	private Path file;

	@BeforeEach
	void makeFile() throws IOException {
		folder = Files.createTempDirectory("places");
		file = folder.resolve("ferry =: plate \u00fc.frjob");
		JobFile.save(new SampleJob().job, file);
	}

	@AfterEach
	void removeFiles() throws IOException {
		try (Stream<Path> files = Files.walk(folder)) {
			for (Path each : files.sorted((a, b) -> b.compareTo(a)).toList()) {
				Files.delete(each);
			}
		}
	}

	private static JobPlace place(IEditorInput input) {
		return Adapters.adapt(input, JobPlace.class);
	}

	@Test
	void inputsKnowTheirPlaceAndComeBackByItsKey() {
		for (IEditorInput input : List.of(new JobInput(file), new UntitledInput(3), UntitledInput.SAMPLE)) {
			JobPlace place = place(input);
			assertEquals(input.getName(), place.name());
			assertEquals(input.getToolTipText(), place.toolTip());
			XMLMemento memento = XMLMemento.createWriteRoot("input");
			memento.putString(PlaceInput.KEY, place.key());
			IElementFactory factory = PlatformUI.getWorkbench().getElementFactory(place.factory());
			assertEquals(input, factory.createElement(memento));
		}
	}

	@Test
	void inputsOfEarlierVersionsAreUnderstood() {
		XMLMemento memento = XMLMemento.createWriteRoot("input");
		memento.putString("path", file.toString());
		assertEquals(new JobInput(file),
				PlatformUI.getWorkbench().getElementFactory(FilePlace.FACTORY).createElement(memento));
	}

	@Test
	void copiesSayOfWhichPlaceTheyAreAndOfWhatItHeld() {
		JobPlace place = place(new JobInput(file));
		Unsaved copy = Copies.of(place, new FilePlace(file).mark());
		assertEquals(Unsaved.of(file, FileStamp.of(file)), copy);
		assertEquals(place.key(), Copies.key(copy));
		assertEquals(new FilePlace(file).mark(), Copies.mark(copy));
		assertEquals(place(new UntitledInput(2)).key(), Copies.key(Unsaved.untitled(2)));
		assertEquals("book:12 /studio", Copies.key(Unsaved.at("book:12 /studio", "7")));
		assertEquals("7", Copies.mark(Unsaved.at("book:12 /studio", "7")));
		assertEquals(FileStamp.NONE, FileStamp.of("no stamp"));
		assertEquals(FileStamp.NONE, FileStamp.of(FileStamp.NONE.text()));
	}

	@Test
	void fileThatSomebodyElseHasWrittenIsNotWrittenOver() throws IOException {
		FilePlace place = new FilePlace(file);
		JobPlace.Held held = place.load();
		assertEquals("Ferry plate", held.job(place.toolTip()).getTitle());
		byte[] theirs = "somebody else's".getBytes(java.nio.charset.StandardCharsets.UTF_8);
		Files.write(file, theirs);
		assertThrows(JobPlace.OvertakenException.class, () -> place.save(held.content(), held.mark()));
		assertArrayEquals(theirs, Files.readAllBytes(file));
		JobPlace.Held kept = place.save(held.content(), place.mark());
		assertArrayEquals(held.content(), Files.readAllBytes(file));
		Files.delete(file);
		place.save(held.content(), kept.mark());
		assertTrue(Files.exists(file), "one that is gone is written again");
	}

	@Test
	void reasonNamesTheFile() {
		Path lost = folder.resolve("nowhere").resolve("lost.frjob");
		IOException reading = assertThrows(IOException.class, () -> new FilePlace(lost).load());
		assertTrue(reading.getMessage().contains(lost.toString()), reading.getMessage());
		IOException writing = assertThrows(IOException.class, () -> new FilePlace(lost).save(new byte[1], ""));
		assertTrue(writing.getMessage().contains(lost.toString()), writing.getMessage());
		assertFalse(Files.exists(lost));
	}
}
