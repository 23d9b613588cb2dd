package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;

import org.frisket.model.ImageBytes;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Stage;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The order book on both databases: in a studio's folder, and on a server. */
class OrderBookTest extends BothDatabases {

	private static final String OTTOLINE = "Ottoline";

	private OrderBook book(boolean shared) {
		return new OrderBook(studio(shared));
	}

	private static NewOrder order(String title) {
		return new NewOrder(title, "Brindle Sound Ferries", Optional.of(LocalDate.of(2031, 5, 17)), 12, "mind the wind");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatWasAskedForIsThere(boolean shared) throws Exception {
		OrderBook book = book(shared);
		Entry added = book.add(order("'; DROP TABLE orders_job; --"), OTTOLINE);
		Entry found = book.find(added.number());
		assertEquals(added, found);
		assertEquals("'; DROP TABLE orders_job; --", found.title());
		assertEquals("Brindle Sound Ferries", found.customer());
		assertEquals(Optional.of(LocalDate.of(2031, 5, 17)), found.due());
		assertEquals(12, found.quantity());
		assertTrue(found.words().contains("mind the wind"));
		assertEquals(found, book.list(1).get(0));
		StoredJob open = book.open(added.number());
		assertEquals(Long.toString(added.number()), open.job().getNumber());
		assertEquals("Brindle Sound Ferries", open.job().getCustomer());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void numbersHaveNoGapsAndAreGivenOnce(boolean shared) throws Exception {
		OrderBook book = book(shared);
		long first = book.add(order("First"), OTTOLINE).number();
		ExecutorService desks = Executors.newFixedThreadPool(4);
		List<Future<Long>> added = IntStream.range(0, 20)
				.mapToObj(i -> desks.submit(() -> book.add(order("Tags " + i), "desk").number())).toList();
		Set<Long> numbers = new HashSet<>();
		for (Future<Long> one : added) {
			numbers.add(one.get());
		}
		desks.shutdown();
		assertEquals(20, numbers.size());
		IntStream.rangeClosed(1, 20).forEach(i -> assertTrue(numbers.contains(first + i), numbers.toString()));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void theSecondToSaveIsTold(boolean shared) throws Exception {
		OrderBook book = book(shared);
		long number = book.add(order("Banner"), OTTOLINE).number();
		StoredJob mine = book.open(number);
		StoredJob theirs = book.open(number);
		theirs.job().setTitle("Banner, landward");
		Jobs.addWording(Jobs.addLayer(theirs.job(), "Lettering"), "Fifty Years", 40);
		Entry saved = book.save(theirs.job(), theirs.entry().revision(), "Quill");
		assertEquals(2, saved.revision());
		assertTrue(saved.words().contains("fifty years"));
		mine.job().setTitle("Banner, seaward");
		JobChangedException told = assertThrows(JobChangedException.class,
				() -> book.save(mine.job(), mine.entry().revision(), OTTOLINE));
		assertEquals("Quill", told.now().changedBy());
		assertTrue(told.getMessage().contains("Quill"), told.getMessage());
		assertEquals("Banner, landward", book.open(number).job().getTitle());
		Entry again = book.save(mine.job(), told.now().revision(), OTTOLINE);
		assertEquals(3, again.revision());
		assertEquals("Banner, seaward", book.find(number).title());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void stagesAndSavesAreNotInEachOthersWay(boolean shared) throws Exception {
		OrderBook book = book(shared);
		long number = book.add(order("Place cards"), OTTOLINE).number();
		StoredJob open = book.open(number);
		book.stage(number, Stage.ORDERED, "Quill", "by post");
		book.stage(number, Stage.APPROVED, OTTOLINE, "");
		open.job().setNotes("blue ink");
		book.save(open.job(), open.entry().revision(), OTTOLINE);
		Job job = book.open(number).job();
		assertEquals(Stage.APPROVED, job.getStage());
		assertEquals("blue ink", job.getNotes());
		assertEquals(2, job.getHistory().size());
		assertEquals("by post", job.getHistory().get(0).getRemark());
		assertEquals(Stage.ORDERED, book.undoStage(number, OTTOLINE).stage());
		assertEquals(3, book.history(number).size());
		assertThrows(OrderException.class, () -> book.stage(number, Stage.ORDERED, OTTOLINE, ""));
		assertEquals(3, book.history(number).size());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void largeDocumentsComeBackAsTheyWere(boolean shared) throws Exception {
		OrderBook book = book(shared);
		Job job = Jobs.create("large-" + shared, "Window");
		Layer layer = Jobs.addLayer(job, "Art");
		byte[] noise = new byte[3_000_000];
		new java.util.Random(7).nextBytes(noise);
		Jobs.addPicture(layer, ImageBytes.of(noise), "image/png", 30, 20);
		Entry entry = book.takeIn(job, OTTOLINE);
		assertEquals(org.frisket.model.JobFile.toBytes(job).length,
				org.frisket.model.JobFile.toBytes(book.open(entry.number()).job()).length);
		OrderException twice = assertThrows(OrderException.class, () -> book.takeIn(job, OTTOLINE));
		assertTrue(twice.getMessage().contains(Long.toString(entry.number())), twice.getMessage());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatIsNotThereIsSaid(boolean shared) throws Exception {
		OrderBook book = book(shared);
		assertTrue(assertThrows(OrderException.class, () -> book.find(999_999)).getMessage().contains("999"));
		assertThrows(OrderException.class, () -> book.open(999_999));
		assertThrows(IllegalArgumentException.class, () -> order("  "));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void customersOfOneNameAreOne(boolean shared) throws Exception {
		OrderBook book = book(shared);
		book.add(new NewOrder("a", "Tern  Bookshop", Optional.empty(), 1, ""), OTTOLINE);
		Entry second = book.add(new NewOrder("b", "tern bookshop ", Optional.empty(), 1, ""), OTTOLINE);
		assertEquals("Tern  Bookshop", book.find(second.number()).customer());
	}

	@org.junit.jupiter.api.Test
	void lookingMakesNoFolderOfJobs() throws Exception {
		OrderBook book = book(false);
		assertEquals(List.of(), book.list(10));
		assertTrue(Files.notExists(studio(false).database()));
	}
}
