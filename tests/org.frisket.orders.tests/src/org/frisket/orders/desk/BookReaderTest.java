package org.frisket.orders.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.NewOrder;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.testkit.BothDatabases;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An order book that is read bit by bit, while other desks change it. */
class BookReaderTest extends BothDatabases {

	private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");

	/** The server is that of all tests of the class. */
	private StudioFolder empty(boolean shared) throws IOException {
		StudioFolder studio = studio(shared);
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<Object, RuntimeException>change(connection -> Sql.update(connection, "DELETE FROM orders_job")
					+ Sql.update(connection, "UPDATE orders_counter SET last_number = 0"));
		}
		return studio;
	}

	private static OrderBook book(StudioFolder studio, Duration after) {
		return new OrderBook(studio, Clock.fixed(NOON.plus(after), ZoneOffset.UTC));
	}

	private static void add(OrderBook book, int count) throws Exception {
		for (int i = 0; i < count; i++) {
			book.add(new NewOrder("Gift tags " + i, "Odila Quern", Optional.empty(), 1, ""), "desk");
		}
	}

	private static List<Long> numbers(KnownJobs jobs) {
		return jobs.jobs().stream().map(Entry::number).toList();
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void theNewestComeFirstAndThenOnlyWhatChanged(boolean shared) throws Exception {
		StudioFolder studio = empty(shared);
		BookReader reader = new BookReader(studio);
		assertEquals(List.of(), reader.all().jobs());
		add(book(studio, Duration.ZERO), 5);
		assertEquals(List.of(5L, 4L), numbers(reader.newest(2)));
		KnownJobs all = reader.all();
		assertSame(all, reader.again(all), "nothing has changed");
		OrderBook elsewhere = book(studio, Duration.ofMinutes(1));
		elsewhere.stage(2, Stage.ORDERED, "other desk", "");
		add(elsewhere, 1);
		KnownJobs now = reader.again(all);
		assertEquals(List.of(6L, 5L, 4L, 3L, 2L, 1L), numbers(now));
		assertEquals(Stage.ORDERED, now.find(2).orElseThrow().stage());
		assertEquals(Optional.empty(), now.find(7));
		assertSame(all.jobs().get(0), now.jobs().get(1), "what is the same was not read again");
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void whatDoesNotAddUpIsReadAsAWhole(boolean shared) throws Exception {
		StudioFolder studio = empty(shared);
		BookReader reader = new BookReader(studio);
		add(book(studio, Duration.ZERO), 4);
		KnownJobs before = reader.all();
		book(studio, Duration.ofHours(-3)).stage(1, Stage.ORDERED, "a desk whose clock is slow", "");
		KnownJobs moved = reader.again(before);
		assertEquals(Stage.ORDERED, moved.find(1).orElseThrow().stage());
		// as after a restore: a job is gone that was there
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.<Object, RuntimeException>change(connection -> Sql.update(connection, "DELETE FROM orders_job WHERE number = ?", 3L));
		}
		assertEquals(List.of(4L, 2L, 1L), numbers(reader.again(moved)));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void onlyTheChangeThatIsMeantIsTakenBack(boolean shared) throws Exception {
		StudioFolder studio = empty(shared);
		add(book(studio, Duration.ZERO), 1);
		Entry moved = book(studio, Duration.ofMinutes(1)).stage(1, Stage.ORDERED, "desk", "");
		OrderBook later = book(studio, Duration.ofMinutes(2));
		later.stage(1, Stage.DESIGNED, "other desk", "");
		assertThrows(JobChangedException.class, () -> later.undoStage(1, moved.since(), "desk"));
		Entry now = later.find(1);
		assertEquals(Stage.DESIGNED, now.stage());
		assertEquals(Stage.ORDERED, later.undoStage(1, now.since(), "desk").stage());
		assertThrows(OrderException.class, () -> later.undoStage(2, now.since(), "desk"));
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void theSampleStudioFillsABook(boolean shared) throws Exception {
		StudioFolder studio = empty(shared);
		List<Entry> filled = SampleStudio.fill(book(studio, Duration.ZERO), SampleEntries.TODAY, "desk");
		assertEquals(12, filled.size());
		List<Entry> there = new BookReader(studio).all().jobs();
		BookTable table = BookTable.of(there, SampleEntries.NAMES);
		for (BookChoice choice : BookChoice.values()) {
			assertNotEquals(0, table.find(BookQuery.ALL.withChoice(choice), SampleEntries.TODAY).size(), choice.name());
		}
		assertEquals(Stage.values().length, there.stream().map(Entry::stage).distinct().count() + 1, "nothing is cancelled");
		Entry tags = there.stream().filter(job -> job.stage() == Stage.PRINTED).findFirst().orElseThrow();
		assertEquals(4, new OrderBook(studio).history(tags.number()).size());
	}
}
