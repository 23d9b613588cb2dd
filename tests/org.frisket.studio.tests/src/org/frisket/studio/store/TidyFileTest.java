package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file in which the same is replaced again and again. */
class TidyFileTest {

	private static final Area SHELVES = new Area("shelves", TidyFileTest.class, "first");
	private static final int SAVES = 60;

	@TempDir
	Path home;

	private final Random random = new Random(11);

	private StudioFolder studio() {
		return new StudioFolder(home.resolve("Harbour Lane"));
	}

	private Path beside(String name) {
		return studio().path().resolve(name);
	}

	/** @return the text that was kept last */
	private String grown() throws IOException {
		String text = "";
		try (Store store = Store.open(studio(), SHELVES)) {
			store.change(connection -> Sql.update(connection, "CREATE TABLE card (content VARCHAR(1000000) NOT NULL)"));
			store.change(connection -> Sql.update(connection, "INSERT INTO card (content) VALUES ('')"));
			for (int i = 0; i < SAVES; i++) {
				String next = random.ints(100_000, 'A', 'z')
						.collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
				store.change(connection -> Sql.update(connection, "UPDATE card SET content = ?", next));
				text = next;
			}
		}
		assertTrue(Files.size(studio().database()) > SAVES * 100_000L, "nothing was written over");
		return text;
	}

	private void assertKept(String text) throws IOException {
		try (Store store = Store.openForReading(studio(), SHELVES)) {
			assertEquals(text, store.read(connection -> Sql.first(connection, "SELECT content FROM card",
					row -> row.getString(1))).orElseThrow());
			assertEquals("card; white", store.read(connection -> Sql.first(connection, "SELECT label FROM shelf",
					row -> row.getString(1))).orElseThrow());
		}
	}

	@Test
	void fileIsFreedOfWhatWasReplaced() throws Exception {
		String text = grown();
		assertKept(text);
		long tidy = Files.size(studio().database());
		assertTrue(tidy < 400_000, tidy + " bytes");
		assertKept(text);
		try (Store store = Store.open(studio(), SHELVES)) {
			store.change(connection -> Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", "felt"));
		}
		assertTrue(Files.size(studio().database()) > tidy, "it is added to again");
		assertFalse(Files.exists(beside("studio-tidy.mv.db")));
	}

	@Test
	void whatAKilledProgramLeftIsRemovedAndNeverUsed() throws Exception {
		String text = grown();
		assertKept(text);
		for (String left : new String[] { "studio-tidy.mv.db", "studio-tidy.mv.db.tempFile", "studio-tidy.mv.db.newFile" }) {
			Files.write(beside(left), new byte[9000]);
		}
		assertKept(text);
		for (String left : new String[] { "studio-tidy.mv.db", "studio-tidy.mv.db.tempFile", "studio-tidy.mv.db.newFile" }) {
			assertFalse(Files.exists(beside(left)), left);
		}
	}

	@Test
	void fileThatCannotBeTidiedIsUsedAsItIs() throws Exception {
		String text = grown();
		long size = Files.size(studio().database());
		Files.createDirectories(beside("studio-tidy.mv.db").resolve("in the way"));
		assertKept(text);
		assertKept(text);
		assertTrue(Files.size(studio().database()) >= size, "it was not written anew");
	}
}
