package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.h2.store.fs.FilePath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is in a file if the program that writes it is killed: after each of its writes, and in the midst of them. The
 * program after it goes on with such a file, and is killed as well. {@code FRISKET_BROKEN_OFF} says how often.
 */
class BrokenOffTest {

	private static final int FEW = 30;

	@TempDir
	Path home;

	private final Random random = new Random(5);
	/** After so many writes: what was told to be kept, and what may be. */
	private final List<long[]> told = new ArrayList<>();
	private long kept = 1;

	@Test
	void whatWasKeptIsThereAfterEachWriteAndBetween() throws Exception {
		FilePath.register(new WrittenFile());
		Path file = home.resolve("shelf.mv.db");
		fill(file);
		int rounds = Integer.parseInt(System.getenv().getOrDefault("FRISKET_BROKEN_OFF", Integer.toString(FEW)));
		for (int round = 0; round < rounds; round++) {
			Path before = home.resolve("before.mv.db");
			Files.copy(file, before, StandardCopyOption.REPLACE_EXISTING);
			WrittenFile.forget();
			told.clear();
			told.add(new long[] { 0, kept, kept });
			for (int session = random.nextInt(3); session >= 0; session--) {
				save(file);
			}
			breakOff(before, file);
		}
	}

	private void fill(Path file) throws Exception {
		try (Connection connection = H2File.open(file, false); Statement statement = connection.createStatement()) {
			statement.execute("CREATE TABLE card (id INTEGER NOT NULL PRIMARY KEY, revision BIGINT NOT NULL)");
			statement.execute("CREATE TABLE text (card INTEGER NOT NULL REFERENCES card (id), content VARCHAR(1000000) NOT NULL)");
			for (int id = 0; id < 40; id++) {
				Sql.update(connection, "INSERT INTO card (id, revision) VALUES (?, 1)", id);
				Sql.update(connection, "INSERT INTO text (card, content) VALUES (?, ?)", id, text(1, 3000));
			}
		}
	}

	/** So that it cannot be packed. */
	private String text(long revision, int length) {
		return revision + " " + random.ints(length, 'A', 'z').collect(StringBuilder::new, StringBuilder::appendCodePoint,
				StringBuilder::append) + "|";
	}

	/** As {@link FileSession} does; closing has writes of its own. */
	private void save(Path file) throws Exception {
		try (Connection connection = H2File.open(WrittenFile.SYSTEM, file, false); Statement statement = connection.createStatement()) {
			connection.setAutoCommit(false);
			tell(kept, kept + 1);
			Sql.update(connection, "UPDATE card SET revision = ? WHERE id = 0", kept + 1);
			Sql.update(connection, "DELETE FROM text WHERE card = 0");
			Sql.update(connection, "INSERT INTO text (card, content) VALUES (0, ?)",
					text(kept + 1, random.nextBoolean() ? 200 : 60_000));
			connection.commit();
			statement.execute("CHECKPOINT SYNC");
			// only then it is told outside of the file
			assertTrue(WrittenFile.isOnDisc());
			kept++;
			tell(kept, kept);
		}
	}

	private void tell(long least, long most) {
		told.add(new long[] { WrittenFile.writes().size(), least, most });
	}

	/** @param file becomes one of those that were broken off, or stays whole */
	private void breakOff(Path before, Path file) throws Exception {
		List<WrittenFile.Write> writes = WrittenFile.writes();
		assertTrue(writes.size() > 1);
		int chosen = random.nextInt(writes.size() + 1);
		Path broken = home.resolve("broken.mv.db");
		try (FileChannel replayed = FileChannel.open(before, StandardOpenOption.WRITE)) {
			for (int i = 0; i < writes.size(); i++) {
				WrittenFile.Write write = writes.get(i);
				Files.copy(before, broken, StandardCopyOption.REPLACE_EXISTING);
				if (random.nextBoolean()) {
					try (FileChannel half = FileChannel.open(broken, StandardOpenOption.WRITE)) {
						write.to(half, random.nextInt(write.length() + 1));
					}
				}
				long there = there(broken, i);
				if (i == chosen) {
					kept = there;
					Files.copy(broken, file, StandardCopyOption.REPLACE_EXISTING);
				}
				write.to(replayed, write.length());
			}
		}
	}

	/** What a file has that was broken off after some writes. */
	private long there(Path broken, int writes) throws SQLException, IOException {
		long[] last = told.get(0);
		for (long[] each : told) {
			last = each[0] <= writes ? each : last;
		}
		try (Connection connection = H2File.open(broken, true)) {
			long revision = Sql.first(connection, "SELECT revision FROM card WHERE id = 0", row -> row.getLong(1)).orElseThrow();
			assertTrue(revision >= last[1] && revision <= last[2], revision + " is there, told " + last[1]);
			String text = Sql.first(connection, "SELECT content FROM text WHERE card = 0", row -> row.getString(1)).orElseThrow();
			assertTrue(text.startsWith(revision + " ") && text.endsWith("|"));
			assertEquals(40, Sql.first(connection, "SELECT COUNT(*) FROM text WHERE content LIKE '%|'", row -> row.getInt(1))
					.orElseThrow());
			return revision;
		}
	}
}
