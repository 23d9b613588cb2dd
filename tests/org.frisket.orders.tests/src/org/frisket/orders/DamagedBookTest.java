package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.model.Job;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Sql;
import org.frisket.studio.store.Store;
import org.frisket.studio.store.StoreException;
import org.frisket.testkit.BothDatabases;
import org.frisket.testkit.PostgresServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An order book whose disc is full or protected, whose file or server is damaged or gone, or who may not do what it takes. */
class DamagedBookTest extends BothDatabases {

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

	/** Wherever a part of the file is overwritten, all is there or a message says what is wrong. */
	@Test
	void damagedFileIsNamedWhereverItIsDamaged() throws Exception {
		StudioFolder studio = studio(false);
		List<Entry> before = filled(studio, 8).list(10);
		byte[] whole = Files.readAllBytes(studio.database());
		Random random = new Random(3);
		int refused = 0;
		for (int i = 0; i < 24; i++) {
			byte[] damaged = whole.clone();
			byte[] scratch = new byte[64 << random.nextInt(8)];
			random.nextBytes(scratch);
			int at = random.nextInt(whole.length - scratch.length);
			System.arraycopy(scratch, 0, damaged, at, scratch.length);
			StudioFolder spoilt = new StudioFolder(home.resolve("spoilt" + i)).openForWriting();
			Files.write(spoilt.database(), damaged);
			OrderBook book = new OrderBook(spoilt);
			try {
				assertEquals(before, book.list(10));
				for (Entry entry : before) {
					assertEquals(entry.title(), book.open(entry.number()).job().getTitle());
				}
			} catch (StoreException e) {
				refused++;
				assertTrue(e.getMessage().contains(spoilt.database().toString()), e.getMessage());
				assertTrue(e.getMessage().contains("it is damaged") && e.getMessage().contains("backup"), e.getMessage());
			} catch (OrderException e) {
				refused++;
				assertTrue(e.getMessage().contains("is damaged"), e.getMessage());
			}
		}
		assertTrue(refused > 6, refused + " of 24 were noticed");
		Files.write(studio.database(), new byte[whole.length]);
		assertThrows(StoreException.class, () -> new OrderBook(studio).list(10));
		assertArrayEquals(new byte[whole.length], Files.readAllBytes(studio.database()), "nothing was written to it");
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
