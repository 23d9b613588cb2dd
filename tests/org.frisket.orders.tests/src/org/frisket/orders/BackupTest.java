package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.material.trials.SettingsArea;
import org.frisket.model.Stage;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.archive.ArchiveException;
import org.frisket.studio.archive.StudioArchive;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Store;
import org.frisket.testkit.PostgresServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A studio as a file, and back. */
class BackupTest {

	@TempDir
	Path home;

	@AfterEach
	void folderAgain() {
		Databases.choose(Optional.empty());
	}

	private StudioFolder studio(String name) {
		return new StudioFolder(home.resolve(name));
	}

	private static StudioArchive archive(StudioFolder studio) {
		return new StudioArchive(studio, List.of(StockShelf.AREA, SettingsArea.AREA, OrderBook.AREA));
	}

	private StudioFolder busy() throws Exception {
		StudioFolder studio = studio("busy");
		OrderBook book = new OrderBook(studio);
		long number = book.add(new NewOrder("Quay \u201Cfifty\u201D\nyears", "Brindle Sound Ferries",
				Optional.of(LocalDate.of(2031, 5, 17)), 12, "\ttab"), "Ottoline").number();
		book.stage(number, Stage.APPROVED, "Quill", "");
		book.add(new NewOrder("No day", "", Optional.empty(), 1, ""), "Ottoline");
		try (Store store = Store.open(studio, StockShelf.AREA)) {
			new StockShelf(store).add(Stock.named("Gull white 270").family(StockFamily.CARD).grammage(new BigDecimal("270.5"))
					.build());
		}
		Files.createDirectories(studio.fonts());
		Files.writeString(studio.fonts().resolve("own.ttf"), "not really");
		studio.preferences().put("unit", "inch");
		studio.preferences().put(Databases.PREFERENCE, "");
		return studio;
	}

	private Path backup(StudioFolder studio, String name) throws IOException {
		Path file = home.resolve(name);
		archive(studio).write(file);
		return file;
	}

	@Test
	void allComesBackOnWhicheverDatabaseAndTheSameStudioGivesTheSameBytes() throws Exception {
		StudioFolder busy = busy();
		Path first = backup(busy, "first.zip");
		assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(backup(busy, "again.zip")));
		StudioFolder other = studio("other");
		archive(other).restore(first, false);
		assertEquals(new OrderBook(busy).list(10), new OrderBook(other).list(10));
		assertEquals("not really", Files.readString(other.fonts().resolve("own.ttf")));
		assertEquals(Optional.of("inch"), other.preferences().get("unit"));
		assertEquals(3, new OrderBook(other).add(new NewOrder("Next", "", Optional.empty(), 1, ""), "Quill").number());
		Databases.choose(Optional.of(PostgresServer.shared().addressOfNew()));
		StudioFolder shared = studio("shared");
		archive(shared).restore(first, false);
		Path back = backup(shared, "server.zip");
		assertEquals(texts(first, "tables/"), texts(back, "tables/"));
		Databases.choose(Optional.empty());
		archive(studio("home")).restore(back, false);
		assertEquals(texts(first, "tables/"), texts(backup(studio("home"), "home.zip"), "tables/"));
	}

	private static Map<String, String> texts(Path file, String folder) throws IOException {
		Map<String, String> texts = new LinkedHashMap<>();
		try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
			for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
				if (entry.getName().startsWith(folder)) {
					texts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
				}
			}
		}
		return texts;
	}

	@Test
	void whatIsThereIsOnlyReplacedIfThatIsAskedFor() throws Exception {
		Path first = backup(busy(), "first.zip");
		StudioFolder other = studio("other");
		OrderBook book = new OrderBook(other);
		book.add(new NewOrder("Mine", "", Optional.empty(), 1, ""), "Quill");
		assertThrows(ArchiveException.class, () -> archive(other).restore(first, false));
		assertEquals("Mine", book.list(10).get(0).title());
		archive(other).restore(first, true);
		assertEquals(List.of("No day", "Quay \u201Cfifty\u201D\nyears"), book.list(10).stream().map(Entry::title).toList());
	}

	/** @param changed texts by the names of entries; null takes one away */
	private Path forged(Path from, Map<String, String> changed) throws IOException {
		Path file = home.resolve("forged.zip");
		Map<String, String> texts = texts(from, "");
		texts.putAll(changed);
		try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
			for (Map.Entry<String, String> each : texts.entrySet()) {
				zip.putNextEntry(new ZipEntry(each.getKey()));
				zip.write(each.getValue().getBytes(StandardCharsets.UTF_8));
			}
		}
		return file;
	}

	@Test
	void damagedAndForgedFilesChangeNothing() throws Exception {
		Path first = backup(busy(), "first.zip");
		StudioFolder other = studio("deep/other");
		String jobs = texts(first, "").get("tables/orders_job.jsonl");
		for (Map<String, String> change : List.of(Map.of("files/../../out.txt", "x"), Map.of("files//etc/out.txt", "x"),
				Map.of("files/a/../../../out.txt", "x"), Map.of("files/..\\out.txt", "x"), Map.of("files/studio.mv.db", "x"),
				Map.of("files/./studio.mv.db", "x"), Map.of("files/fonts/../studio.mv.db", "x"),
				Map.of("files/STUDIO.MV.DB", "x"), Map.of("files/studio.mv.db. .", "x"), Map.of("files/fonts//own.ttf", "x"),
				Map.of("files/studio.properties", "unit=\\u12"), Map.of("versions.txt", "orders 099-tomorrow"), Map.of("tables/orders_job.jsonl", jobs + "[1]\n"),
				Map.of("tables/orders_job.jsonl", jobs.replace("2031-05-17", "soon")),
				Map.of("tables/orders_job.jsonl", jobs + "nonsense"),
				Map.of("tables/orders_job.jsonl", "[\"id) VALUES (1); DROP TABLE orders_job; --\"]\n"))) {
			Path forged = forged(first, change);
			ArchiveException refused = assertThrows(ArchiveException.class, () -> archive(other).restore(forged, false),
					change.toString());
			assertTrue(refused.getMessage().contains("forged.zip"), refused.getMessage());
			assertEquals(List.of(), new OrderBook(other).list(10));
			assertFalse(Files.exists(home.resolve("out.txt")));
			assertFalse(Files.exists(other.fonts().resolve("own.ttf")));
		}
		Path text = home.resolve("text.zip");
		Files.writeString(text, "no zip");
		assertThrows(ArchiveException.class, () -> archive(other).restore(text, false));
		assertThrows(ArchiveException.class, () -> archive(other).restore(home.resolve("nowhere.zip"), false));
	}

	@Test
	void damagedFontIsFoundBeforeAnythingIsBroughtBack() throws Exception {
		byte[] zip = Files.readAllBytes(backup(busy(), "first.zip"));
		int entry = new String(zip, StandardCharsets.ISO_8859_1).lastIndexOf("files/fonts/own.ttf") - 46;
		// its sum
		zip[entry + 16]++;
		assertRefused(zip, studio("deep/other"), "own.ttf\u201D in it is damaged");
	}

	@Test
	void backupIsNotWrittenIntoWhatItIsABackupOf() throws Exception {
		StudioFolder busy = busy();
		Files.createSymbolicLink(home.resolve("elsewhere"), busy.path());
		for (Path inside : List.of(busy.path().resolve("own.zip"), busy.fonts().resolve("../new/own.zip"),
				home.resolve("elsewhere").resolve("own.zip"))) {
			IOException refused = assertThrows(IOException.class, () -> archive(busy).write(inside));
			assertTrue(refused.getMessage().contains("own.zip"), refused.getMessage());
			assertFalse(Files.exists(inside));
		}
		archive(busy).write(busy.path().resolve("../busy.zip"));
	}

	@Test
	void filesThatCannotBeBroughtBackAreNamed() throws Exception {
		Path first = backup(busy(), "first.zip");
		StudioFolder other = studio("other").openForWriting();
		// in the place of the font
		Files.createDirectories(other.fonts().resolve("own.ttf").resolve("full"));
		ArchiveException told = assertThrows(ArchiveException.class, () -> archive(other).restore(first, false));
		assertTrue(told.getMessage().contains("jobs and stock are back, but \u201Cfonts/own.ttf"), told.getMessage());
		assertEquals(2, new OrderBook(other).list(10).size());
	}

	/** The last bytes of the name of one entry become those of another, in the directory and before the file. */
	private static byte[] renamed(byte[] zip, String from, String to) {
		assertEquals(from.length(), to.length());
		return new String(zip, StandardCharsets.ISO_8859_1).replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
	}

	@Test
	void namesThatAreThereTwiceLinksAndWhatGrowsOutOfAllProportionAreRefused() throws Exception {
		Path first = backup(busy(), "first.zip");
		StudioFolder other = studio("deep/other");
		byte[] twice = renamed(Files.readAllBytes(forged(first, Map.of("files/fonts/a.ttf", "x", "files/fonts/b.ttf", "y"))),
				"files/fonts/a.ttf", "files/fonts/b.ttf");
		assertRefused(twice, other, "twice");
		byte[] link = Files.readAllBytes(forged(first, Map.of("files/fonts/a.ttf", "/etc/passwd")));
		int entry = new String(link, StandardCharsets.ISO_8859_1).lastIndexOf("files/fonts/a.ttf") - 46;
		link[entry + 5] = 3;
		link[entry + 41] = (byte) 0xa1;
		assertRefused(link, other, "is a link");
		String jobs = texts(first, "").get("tables/orders_job.jsonl");
		for (Map<String, String> bomb : List.of(Map.of("tables/orders_job.jsonl", jobs + " ".repeat(40 << 20)),
				Map.of("versions.txt", " ".repeat(40 << 20)))) {
			assertRefused(Files.readAllBytes(forged(first, bomb)), other, "out of all proportion");
		}
	}

	private void assertRefused(byte[] zip, StudioFolder studio, String why) throws Exception {
		Path file = Files.write(home.resolve("hostile.zip"), zip);
		ArchiveException refused = assertThrows(ArchiveException.class, () -> archive(studio).restore(file, false));
		assertTrue(refused.getMessage().contains(why) && refused.getMessage().contains("hostile.zip"), refused.getMessage());
		assertEquals(List.of(), new OrderBook(studio).list(10));
		assertFalse(Files.exists(studio.fonts().resolve("own.ttf")));
	}
}
