package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

class StoreTest {

	private static final Area FIRST = area("first");
	private static final Area SECOND = area("second");
	private static final Area FAILING = area("failing");
	private static final Duration SOON = Duration.ofMillis(60);

	@TempDir
	Path home;

	private static Area area(String folder) {
		return new Area("shelves", StoreTest.class, folder);
	}

	private StudioFolder studio() {
		return new StudioFolder(home.resolve("Harbour Lane"));
	}

	private static List<String> labels(Store store) throws IOException {
		return store.read(connection -> Sql.list(connection, "SELECT label FROM shelf ORDER BY id", row -> row.getString(1)));
	}

	private static void add(Store store, String label) throws IOException {
		store.change(connection -> Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", label));
	}

	private StoreException assertRefused(String reason, Executable opening) {
		StoreException refused = assertThrows(StoreException.class, opening);
		assertTrue(refused.reason().contains(reason), refused.getMessage());
		assertTrue(refused.getMessage().contains(studio().database().toString()), refused.getMessage());
		return refused;
	}

	private List<String> files() throws IOException {
		try (Stream<Path> files = Files.list(studio().path())) {
			return files.map(file -> file.getFileName().toString()).filter(name -> name.matches(".*(db|lock)")).sorted()
					.toList();
		}
	}

	@Test
	void whatIsKeptIsThereAgain() throws Exception {
		try (Store store = Store.open(studio(), FIRST)) {
			add(store, "'; DROP TABLE shelf;");
		}
		try (Store store = Store.open(studio(), FIRST)) {
			assertEquals(List.of("card; white", "'; DROP TABLE shelf;"), labels(store));
		}
		assertEquals(List.of("studio.lock", "studio.mv.db"), files());
	}

	@Test
	void olderStoreIsBroughtUpToDateAndKeepsWhatItHas() throws Exception {
		try (Store store = Store.open(studio(), FIRST)) {
			add(store, "felt");
		}
		try (Store store = Store.open(studio(), SECOND)) {
			assertEquals(List.of(900, 900), store.read(connection -> Sql.list(connection,
					"SELECT length_mm FROM shelf ORDER BY id", row -> row.getBigDecimal(1).intValueExact())));
			assertEquals(List.of(1, 4), store.read(connection -> Sql.list(connection,
					"SELECT number FROM store_version WHERE area = ? ORDER BY number", row -> row.getInt(1), "shelves")));
		}
	}

	@Test
	void migrationThatFailsHalfWayLeavesTheStoreAsItWas() throws Exception {
		try (Store store = Store.open(studio(), FIRST)) {
			add(store, "felt");
		}
		byte[] before = Files.readAllBytes(studio().database());
		assertRefused("shelves 002-half", () -> Store.open(studio(), FAILING));
		assertArrayEquals(before, Files.readAllBytes(studio().database()), "not a byte is another");
		assertEquals(List.of("studio.lock", "studio.mv.db"), files());
		try (Store store = Store.open(studio(), FIRST)) {
			assertEquals(List.of("card; white", "felt"), labels(store));
		}
	}

	@Test
	void firstMigrationThatFailsLeavesNoStore() {
		assertRefused("shelves 002-half", () -> Store.open(studio(), FAILING));
		assertFalse(Files.exists(studio().database()));
	}

	@Test
	void storeOfANewerProgramIsRefused() throws Exception {
		Store.open(studio(), SECOND).close();
		assertRefused("newer Frisket (shelves 004)", () -> Store.open(studio(), FIRST));
		assertRefused("newer Frisket (shelves 004)", () -> Store.openForReading(studio(), FIRST));
	}

	@Test
	void areasOfSeveralBundlesStandSideBySide() throws Exception {
		Store.open(studio(), FIRST).close();
		Area other = new Area("orders", StoreTest.class, "orders");
		IOException lacks = assertThrows(IOException.class, () -> Store.open(studio(), FIRST, other));
		assertTrue(lacks.getMessage().contains("orders/index.txt"), lacks.getMessage());
		assertThrows(IOException.class, () -> Store.open(studio(), area("unordered")));
		assertThrows(IllegalArgumentException.class, () -> new Area("x'; DROP", StoreTest.class, "first"));
		Store.open(studio(), FIRST).close();
	}

	@Test
	void changeThatFailsIsTakenBackWhole() throws Exception {
		try (Store store = Store.open(studio(), FIRST)) {
			assertThrows(IllegalStateException.class, () -> store.change(connection -> {
				Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "lost");
				throw new IllegalStateException("stop");
			}));
			assertRefused("Value too long", () -> store.change(connection -> {
				Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "lost");
				return Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "x".repeat(21));
			}));
			store.read(connection -> Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "not kept either"));
			assertEquals(List.of("card; white"), labels(store));
		}
	}

	@Test
	void manyRowsGoInBatches() throws Exception {
		try (Store store = Store.open(studio(), FIRST)) {
			store.change(connection -> {
				Sql.updateAll(connection, "INSERT INTO shelf (label) VALUES (?)",
						Stream.iterate(1, i -> i + 1).limit(2500).map(i -> new Object[] { "sheet " + i })::iterator);
				return null;
			});
			assertEquals(2501, labels(store).size());
			assertEquals(new BigDecimal("1.50"), store.read(connection -> Sql.first(connection,
					"SELECT CAST(1.5 AS DECIMAL(4, 2))", row -> row.getBigDecimal(1))).orElseThrow());
		}
	}

	@Test
	void storeInUseIsToldAfterAWhile() throws Exception {
		Store.open(studio(), FIRST).close();
		try (FileChannel other = FileChannel.open(studio().databaseLock(), StandardOpenOption.WRITE)) {
			other.lock();
			assertRefused("another program is using it", () -> Store.open(studio(), SOON, FIRST));
		}
		Store.open(studio(), SOON, FIRST).close();
	}

	/** A program of its own. */
	static final class Holder {

		private Holder() {
		}

		public static void main(String[] file) throws Exception {
			try (FileChannel channel = FileChannel.open(Path.of(file[0]), StandardOpenOption.WRITE)) {
				channel.lock();
				System.out.println("held");
				System.in.read();
			}
		}
	}

	@Test
	void anotherProcessIsWaitedFor() throws Exception {
		Store.open(studio(), FIRST).close();
		String name = Holder.class.getName();
		Path program = home.resolve(name.replace('.', '/') + ".class");
		Files.createDirectories(program.getParent());
		try (InputStream in = StoreTest.class.getResourceAsStream("StoreTest$Holder.class")) {
			Files.copy(in, program);
		}
		Process holder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
				"-cp", home.toString(), name, studio().databaseLock().toString()).start();
		try {
			assertEquals('h', holder.getInputStream().read());
			assertRefused("another program is using it", () -> Store.open(studio(), SOON, FIRST));
			holder.getOutputStream().close();
			Store.open(studio(), FIRST).close();
		} finally {
			holder.destroy();
		}
	}

	@Test
	void threadsOfOneProcessShareAndNoneIsLost() throws Exception {
		ExecutorService threads = Executors.newFixedThreadPool(4);
		try {
			CountDownLatch all = new CountDownLatch(4);
			List<Callable<Void>> work = new ArrayList<>();
			for (int i = 0; i < 4; i++) {
				Area area = i % 2 == 0 ? SECOND : new Area("others", StoreTest.class, "others");
				work.add(() -> {
					all.countDown();
					all.await();
					for (int n = 0; n < 2; n++) {
						try (Store store = Store.open(studio(), area)) {
							store.change(connection -> area == SECOND
									? Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "more")
									: Sql.update(connection, "INSERT INTO other (id) VALUES (DEFAULT)"));
						}
					}
					return null;
				});
			}
			for (Future<Void> each : threads.invokeAll(work)) {
				each.get();
			}
		} finally {
			threads.shutdownNow();
		}
		try (Store store = Store.open(studio(), SECOND)) {
			assertEquals(5, labels(store).size());
			assertEquals(4, store.read(connection -> Sql.first(connection, "SELECT COUNT(*) FROM other",
					row -> row.getInt(1))).orElseThrow());
		}
	}

	@Test
	void brokenFileIsNamed() throws Exception {
		studio().openForWriting();
		Files.writeString(studio().database(), "no database ".repeat(2000));
		assertRefused("damaged", () -> Store.open(studio(), FIRST));
		assertRefused("damaged", () -> Store.openForReading(studio(), FIRST));
		Files.delete(studio().database());
		Store.open(studio(), FIRST).close();
		byte[] whole = Files.readAllBytes(studio().database());
		Files.write(studio().database(), Arrays.copyOf(whole, whole.length / 3));
		assertRefused("damaged", () -> Store.open(studio(), FIRST));
		Files.delete(studio().database());
		Files.createDirectory(studio().database());
		assertThrows(StoreException.class, () -> Store.open(studio(), FIRST));
	}

	@Test
	void lookingIntoAStudioWithoutAStoreMakesNone() throws Exception {
		try (Store store = Store.openForReading(studio(), FIRST)) {
			assertEquals(List.of("card; white"), labels(store));
			assertRefused("writing to it is not permitted", () -> add(store, "felt"));
		}
		assertFalse(Files.exists(studio().path()), "nor a folder");
		studio().open();
		try (Store store = Store.openForReading(studio(), FIRST)) {
			assertEquals(List.of("card; white"), labels(store));
		}
		assertEquals(List.of(), files());
	}

	@Test
	void readingChangesNothing() throws Exception {
		Store.open(studio(), FIRST).close();
		try (Store store = Store.openForReading(studio(), FIRST)) {
			assertRefused("writing to it is not permitted", () -> add(store, "felt"));
		}
	}

	@Test
	void protectedFileIsReadByManyAndIsNotBroughtUpToDate() throws Exception {
		Store.open(studio(), FIRST).close();
		byte[] before = Files.readAllBytes(studio().database());
		try (Store store = Store.protectedFile(studio().database(), SOON, FIRST);
				Store second = Store.protectedFile(studio().database(), SOON, FIRST)) {
			assertEquals(List.of("card; white"), labels(store));
			assertEquals(List.of("card; white"), labels(second));
			assertRefused("writing to it is not permitted", () -> add(store, "felt"));
		}
		assertRefused("older Frisket", () -> Store.protectedFile(studio().database(), SOON, SECOND));
		assertArrayEquals(before, Files.readAllBytes(studio().database()));
	}

	/** A connection that is left open holds the file, and H2 lets nobody write to it who comes after in the same process. */
	@Test
	void protectedFileIsLetGoOfWhenItIsRefused() throws Exception {
		Store.open(studio(), SECOND).close();
		assertRefused("newer Frisket", () -> Store.protectedFile(studio().database(), SOON, FIRST));
		try (Store store = Store.open(studio(), SECOND)) {
			add(store, "felt");
			assertTrue(labels(store).contains("felt"));
		}
	}

	@Test
	void namesOfFoldersAreNeverSettings() throws Exception {
		for (String name : List.of("a b", "quote'\"", "Stra\u00DFe", "50%20off", "h#?x", "~home", "${user.home}")) {
			StudioFolder studio = new StudioFolder(home.resolve(name));
			Store.open(studio, FIRST).close();
			assertTrue(Files.exists(studio.database()), name);
		}
		StudioFolder studio = new StudioFolder(home.resolve("x;INIT=CREATE SCHEMA made"));
		StoreException refused = assertThrows(StoreException.class, () -> Store.open(studio, FIRST));
		assertTrue(refused.reason().contains("semicolon"), refused.getMessage());
	}
}
