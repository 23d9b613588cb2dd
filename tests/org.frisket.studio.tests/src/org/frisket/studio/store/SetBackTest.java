package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that has lost what was kept in it says so; one that has lost nothing is never suspected. */
class SetBackTest {

	private static final Area SHELVES = new Area("shelves", SetBackTest.class, "first");
	private static final int DAMAGES = 30;

	@TempDir
	Path home;

	private Path file;
	private Path mark;

	@BeforeEach
	void fill() throws IOException {
		file = studio().database();
		mark = studio().databaseRevision();
		for (int i = 1; i <= 5; i++) {
			add("felt " + i);
		}
	}

	private StudioFolder studio() {
		return new StudioFolder(home.resolve("Harbour Lane"));
	}

	private void add(String label) throws IOException {
		try (Store store = Store.open(studio(), SHELVES)) {
			store.change(connection -> Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", label));
		}
	}

	private List<String> labels() throws IOException {
		return labels(studio());
	}

	private static List<String> labels(StudioFolder studio) throws IOException {
		try (Store store = Store.openForReading(studio, SHELVES)) {
			return store.read(connection -> Sql.list(connection, "SELECT label FROM shelf WHERE label LIKE 'felt%' ORDER BY id",
					row -> row.getString(1)));
		}
	}

	private StoreException assertTold() {
		StoreException told = assertThrows(StoreException.class, this::labels);
		assertTrue(told.getMessage().contains(file.toString()), told.getMessage());
		return told;
	}

	@Test
	void olderCopyIsToldAndStaysAsItIsUntilSomebodySaysSo() throws Exception {
		Path copy = home.resolve("copy");
		Files.copy(file, copy);
		add("felt 6");
		add("felt 7");
		Files.copy(copy, file, StandardCopyOption.REPLACE_EXISTING);
		String reason = assertTold().reason();
		assertTrue(reason.contains("at change 5, but 7 were kept") && reason.contains("studio.revision"), reason);
		assertThrows(StoreException.class, () -> add("felt 8"));
		assertEquals(-1, Files.mismatch(copy, file), "not a byte is another");
		Files.delete(mark);
		assertEquals(5, labels().size());
		add("felt 6");
		assertEquals(6, labels().size());
	}

	/** Cut off, or as a disc loses it: whoever looks at the file from outside sees nothing. */
	@Test
	void endThatIsLostIsNeverPassedOverInSilence() throws Exception {
		byte[] whole = Files.readAllBytes(file);
		List<String> all = labels();
		Random random = new Random(17);
		int told = 0;
		for (int i = 0; i < DAMAGES; i++) {
			byte[] damaged = i % 2 == 0 ? Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
			if (i % 2 == 1) {
				int from = whole.length - 1 - random.nextInt(whole.length / 2);
				Arrays.fill(damaged, from, Math.min(from + 4096, whole.length), (byte) 0);
			}
			StudioFolder copy = new StudioFolder(home.resolve("copy " + i)).openForWriting();
			Files.write(copy.database(), whole);
			Files.copy(mark, copy.databaseRevision());
			assertEquals(all, labels(copy));
			FileTime left = Files.getLastModifiedTime(copy.database());
			Files.write(copy.database(), damaged);
			Files.setLastModifiedTime(copy.database(), left);
			try {
				assertEquals(all, labels(copy), "damage " + i);
			} catch (StoreException e) {
				told += e.getMessage().contains("were kept") ? 1 : 0;
			}
		}
		assertTrue(told > 0, "no file was opened as it was before");
	}

	@Test
	void newFileWhereTheOldOneWasLaidAsideIsNotSuspected() throws Exception {
		Files.move(file, home.resolve("aside"));
		assertEquals(List.of(), labels());
		add("felt 1");
		assertEquals(List.of("felt 1"), labels());
		// nor is the old one, when it is brought back
		Files.move(home.resolve("aside"), file, StandardCopyOption.REPLACE_EXISTING);
		assertEquals(5, labels().size());
	}

	@Test
	void markThatSaysFewerOrNothingRaisesNoAlarm() throws Exception {
		byte[] before = Files.readAllBytes(mark);
		add("felt 6");
		Files.write(mark, before);
		assertEquals(6, labels().size(), "killed between the two");
		byte[] now = Files.readAllBytes(mark);
		for (byte[] broken : List.of(new byte[0], new byte[now.length], Arrays.copyOf(now, 30), "another".getBytes())) {
			Files.write(mark, broken);
			assertEquals(6, labels().size());
		}
		add("felt 7");
		assertEquals(7, new RevisionMark(mark).count().orElseThrow().changes(), "it counts again");
	}

	@Test
	void threadsThatMarkInTheOtherOrderTakeNothingBack() throws Exception {
		RevisionMark written = new RevisionMark(mark);
		ChangeCount now = written.count().orElseThrow();
		written.change(new ChangeCount(now.file(), now.changes() - 1));
		assertEquals(now, written.count().orElseThrow());
		written.change(new ChangeCount("f".repeat(36), 1));
		assertEquals(1, written.count().orElseThrow().changes(), "another file begins anew");
	}

	@Test
	void fileOfAnOlderFrisketThatDidNotCountBeginsTo() throws Exception {
		try (var connection = H2File.open(file, false)) {
			Sql.update(connection, "DROP TABLE store_count");
		}
		Files.writeString(mark, "c0ffee00-0000-4000-8000-000000000000");
		assertEquals(5, labels().size());
		add("felt 6");
		assertEquals(1, new RevisionMark(mark).count().orElseThrow().changes());
		assertEquals(6, labels().size());
		assertFalse(Files.exists(file.resolveSibling("studio-update.mv.db")));
	}
}
