package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Job;
import org.frisket.model.Stage;
import org.frisket.orders.customers.Customers;
import org.frisket.orders.desk.BookReader;
import org.frisket.orders.desk.KnownJobs;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.studio.store.StoreException;
import org.frisket.testkit.BothDatabases;
import org.frisket.testkit.PostgresServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * An order book whose disc is full or protected, whose file or server is damaged or gone, or who may not do what it takes.
 * {@code FRISKET_DAMAGES} says at how many places its file is damaged.
 */
class DamagedBookTest extends BothDatabases {

	private static final int DAMAGES = Integer.parseInt(System.getenv().getOrDefault("FRISKET_DAMAGES", "12"));

	private static OrderBook filled(StudioFolder studio, int jobs) throws Exception {
		OrderBook book = new OrderBook(studio);
		for (int i = 0; i < jobs; i++) {
			book.add(new NewOrder("Card " + i, "Brindle Sound Ferries", Optional.empty(), 1, ""), "Ottoline");
		}
		return book;
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void damagedDocumentSpoilsItsJobOnly(boolean shared) throws Exception {
		StudioFolder studio = studio(shared);
		OrderBook book = new OrderBook(studio);
		long first = filled(studio, 3).list(1).get(0).number() - 2;
		for (String content : List.of("no Base64 \u2020", "YWJj", "")) {
			try (Store store = Store.open(studio, OrderBook.AREA)) {
				store.change(connection -> Sql.update(connection, "UPDATE orders_document SET content = ? WHERE job = ?", content,
						Sql.first(connection, "SELECT id FROM orders_job WHERE number = ?", row -> row.getString(1), first)
								.orElseThrow()));
			}
			OrderException damaged = assertThrows(OrderException.class, () -> book.open(first));
			assertTrue(damaged.getMessage().contains("job " + first + " is damaged"), damaged.getMessage());
			assertTrue(damaged.getMessage().contains("backup"), damaged.getMessage());
			assertEquals("Card 0", book.find(first).title());
			assertTrue(book.list(10).size() >= 3);
			Job next = book.open(first + 1).job();
			assertEquals("Card 1", next.getTitle());
		}
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void rowThatCannotBeReadSpoilsNoList(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderBook book = filled(studio, 3);
		BookReader reader = new BookReader(studio);
		KnownJobs before = reader.all();
		assertEquals(List.of(), book.unreadable());
		change(studio, "UPDATE orders_job SET stage = 'GILDED' WHERE number = 2");
		assertEquals(List.of(3L, 1L), numbers(book.list(10)));
		assertEquals(List.of(3L, 1L), numbers(book.changedSince(Instant.EPOCH)));
		KnownJobs now = reader.again(before);
		assertEquals(List.of(3L, 1L), numbers(now.jobs()));
		assertSame(now, reader.again(now), "it is not read anew for ever");
		assertEquals(List.of(2L), book.unreadable());
		assertEquals(List.of(2L), now.unreadable());
		assertEquals(List.of(2L), reader.newest(1).unreadable());
		assertUnreadable("GILDED", () -> book.find(2));
		assertUnreadable("GILDED", () -> book.open(2));
		assertUnreadable("GILDED", () -> book.stage(2, Stage.ORDERED, "Ottoline", ""));
		assertUnreadable("GILDED", () -> new Customers(studio).jobs(new Customers(studio).find("Brindle Sound Ferries")));
		assertEquals("Card 2", book.open(3).job().getTitle());
		book.stage(3, Stage.ORDERED, "Ottoline", "");
		assertEquals(4, book.add(new NewOrder("Card 3", "", Optional.empty(), 1, ""), "Ottoline").number());
		change(studio, "UPDATE orders_job SET stage = 'ORDERED' WHERE number = 2");
		assertEquals(List.of(4L, 3L, 2L, 1L), numbers(book.list(10)));
		assertEquals(List.of(), reader.again(now).unreadable());
	}

	@ParameterizedTest
	@ValueSource(booleans = { false, true })
	void historyThatCannotBeReadSpoilsItsJobOnly(boolean shared) throws Exception {
		StudioFolder studio = emptyStudio(shared);
		OrderBook book = filled(studio, 2);
		book.stage(2, Stage.ORDERED, "Ottoline", "");
		book.handedOut(1, PaperKind.PROOF, "Ottoline", "");
		change(studio, "UPDATE orders_stage_change SET from_stage = 'GILDED'");
		change(studio, "UPDATE orders_paper SET kind = 'VELLUM'");
		assertEquals(List.of(2L, 1L), numbers(book.list(10)));
		assertUnreadable("GILDED", () -> book.open(2));
		assertUnreadable("GILDED", () -> book.history(2));
		OrderException papers = assertThrows(OrderException.class, () -> book.papers(1));
		assertTrue(papers.getMessage().contains("job 1 ") && papers.getMessage().contains("VELLUM"), papers.getMessage());
		assertEquals("Card 0", book.open(1).job().getTitle());
	}

	private static void change(StudioFolder studio, String sql) throws IOException {
		try (Store store = Store.open(studio, OrderBook.AREA)) {
			store.change(connection -> Sql.update(connection, sql));
		}
	}

	private static void assertUnreadable(String word, Executable asking) {
		OrderException unreadable = assertThrows(OrderException.class, asking);
		assertTrue(unreadable.getMessage().contains("job 2 ") && unreadable.getMessage().contains(word), unreadable.getMessage());
	}

	@Test
	void fullDiscIsNamedAndNothingThatWasKeptIsLost() throws Exception {
		try (SmallDisc disc = new SmallDisc(home.resolve("small"), "9m")) {
			StudioFolder studio = new StudioFolder(home.resolve("small/studio"));
			OrderBook book = filled(studio, 2);
			Random random = new Random(7);
			List<Entry> kept = new ArrayList<>(book.list(10));
			StoreException full = assertThrows(StoreException.class, () -> {
				while (true) {
					kept.add(0, large(book, random));
				}
			});
			assertTrue(full.getMessage().contains("no room left"), full.getMessage());
			assertTrue(full.getMessage().contains(studio.database().toString()), full.getMessage());
			assertEquals(numbers(kept), numbers(book.list(1000)));
			assertEquals("Card 0", book.open(1).job().getTitle());
			disc.resize("32m");
			kept.add(0, large(book, random));
			assertEquals(numbers(kept), numbers(book.list(1000)));
		}
	}

	private static List<Long> numbers(List<Entry> jobs) {
		return jobs.stream().map(Entry::number).toList();
	}

	/** With notes that cannot be packed. */
	private static Entry large(OrderBook book, Random random) throws Exception {
		String notes = random.ints(100_000, 33, 127)
				.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
		return book.add(new NewOrder("Banner", "Brindle Sound Ferries", Optional.empty(), 1, notes), "Ottoline");
	}

	@Test
	void protectedDiscIsLookedAt() throws Exception {
		try (SmallDisc disc = new SmallDisc(home.resolve("small"), "16m")) {
			StudioFolder studio = new StudioFolder(home.resolve("small/studio"));
			OrderBook book = filled(studio, 2);
			disc.protect();
			assertEquals(2, book.list(10).size());
			assertEquals("Card 0", book.open(1).job().getTitle());
			IOException refused = assertThrows(IOException.class, () -> filled(studio, 1));
			assertTrue(refused.getMessage().contains(studio.path().toString()), refused.getMessage());
			assertTrue(refused.getMessage().contains("not permitted"), refused.getMessage());
		}
	}

	/**
	 * Wherever a part of the file is overwritten, a message says what is wrong, or all is there. The end of the file alone
	 * does not tell: what was kept last looks like a change that a killed program did not finish.
	 */
	@Test
	void damagedFileIsNamedWhereverItIsDamaged() throws Exception {
		StudioFolder studio = studio(false);
		List<Entry> before = filled(studio, 8).list(10);
		byte[] whole = Files.readAllBytes(studio.database());
		Random random = new Random(3);
		int noticed = 0;
		for (int i = 0; i < DAMAGES; i++) {
			byte[] damaged = whole.clone();
			byte[] scratch = new byte[64 << random.nextInt(8)];
			random.nextBytes(scratch);
			int at = random.nextInt(whole.length - scratch.length);
			System.arraycopy(scratch, 0, damaged, at, scratch.length);
			StudioFolder spoilt = new StudioFolder(home.resolve("spoilt" + i)).openForWriting();
			Files.write(spoilt.database(), damaged);
			Files.copy(studio.databaseRevision(), spoilt.databaseRevision());
			OrderBook book = new OrderBook(spoilt);
			try {
				List<Entry> there = book.list(10);
				assertEquals(before, there);
				for (Entry entry : there) {
					assertEquals(entry.title(), book.open(entry.number()).job().getTitle());
				}
			} catch (StoreException e) {
				noticed++;
				assertTrue(e.getMessage().contains(spoilt.database().toString()), e.getMessage());
				assertTrue(e.getMessage().contains("backup")
						&& (e.getMessage().contains("it is damaged") || e.getMessage().contains("were kept")), e.getMessage());
			} catch (OrderException e) {
				noticed++;
				assertTrue(e.getMessage().contains("is damaged"), e.getMessage());
			}
			assertFree(spoilt.database());
			// as a backup comes back
			Files.write(spoilt.database(), whole);
			assertEquals(before, book.list(10));
		}
		assertTrue(noticed > 0, "none of " + DAMAGES + " was noticed");
		Files.write(studio.database(), new byte[whole.length]);
		assertThrows(StoreException.class, () -> new OrderBook(studio).list(10));
		assertArrayEquals(new byte[whole.length], Files.readAllBytes(studio.database()), "nothing was written to it");
	}

	/** A lock that was left on it would keep others out for as long as this program runs. */
	private static void assertFree(Path file) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE); FileLock lock = channel.tryLock()) {
			assertNotNull(lock, file.toString());
		} catch (OverlappingFileLockException e) {
			fail(file + " is locked by this program", e);
		}
	}

	@Test
	void serverThatRefusesIsNamed() throws Exception {
		try (PostgresServer server = PostgresServer.start("gangway-31")) {
			String address = server.address();
			StudioFolder studio = new StudioFolder(home.resolve("studio"));
			Databases.choose(Optional.of(address + "&password=wrong"));
			assertReason(studio, "does not accept the user or the password");
			Databases.choose(Optional.of(address + "&password=gangway-31"));
			filled(studio, 1);
			try (Store store = Store.open(studio, OrderBook.AREA)) {
				store.change(connection -> {
					Sql.update(connection, "CREATE ROLE visitor LOGIN PASSWORD 'quay'");
					Sql.update(connection, "GRANT SELECT ON ALL TABLES IN SCHEMA public TO visitor");
					Sql.update(connection, "CREATE SCHEMA visitors");
					return Sql.update(connection, "GRANT USAGE ON SCHEMA visitors TO visitor");
				});
			}
			String visitor = address.replace("user=frisket", "user=visitor&password=quay");
			Databases.choose(Optional.of(visitor + "&currentSchema=visitors"));
			assertReason(studio, "does not permit that to this user");
			// whoever may only look still can
			Databases.choose(Optional.of(visitor));
			assertEquals(1, new OrderBook(studio).list(10).size());
			assertEquals("Card 0", new OrderBook(studio).open(1).job().getTitle());
			IOException refused = assertThrows(IOException.class, () -> filled(studio, 1));
			assertTrue(refused.getMessage().contains("does not permit that"), refused.getMessage());
			Databases.choose(Optional.of(address + "&password=gangway-31"));
			server.stop();
			assertReason(studio, "no connection to the server");
			assertNotEquals("", Store.revision(studio));
			server.begin();
			assertEquals(1, new OrderBook(studio).list(10).size());
		}
	}

	private static void assertReason(StudioFolder studio, String reason) {
		StoreException refused = assertThrows(StoreException.class, () -> new OrderBook(studio).list(10));
		assertTrue(refused.reason().contains(reason), refused.getMessage());
		assertTrue(refused.getMessage().contains("127.0.0.1"), refused.getMessage());
		assertTrue(!refused.getMessage().contains("wrong") && !refused.getMessage().contains("gangway"), refused.getMessage());
	}
}
