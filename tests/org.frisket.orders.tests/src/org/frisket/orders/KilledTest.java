package org.frisket.orders;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Random;

import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Sql;
import org.frisket.testkit.PostgresServer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that is killed while it saves: what it was told is kept, is kept, and nothing is there by half.
 * {@code FRISKET_KILLS} says how often it is killed.
 */
class KilledTest {

	private static final int FEW = 2;

	@TempDir
	Path home;

	@AfterEach
	void folderAgain() {
		Databases.choose(Optional.empty());
	}

	@Test
	void whatWasKeptIsThereWheneverTheProgramIsKilled() throws Exception {
		killAgainAndAgain("");
	}

	@Test
	void whatWasKeptOnAServerIsThereWheneverTheProgramIsKilled() throws Exception {
		killAgainAndAgain(PostgresServer.shared().addressOfNew());
	}

	private void killAgainAndAgain(String address) throws Exception {
		Databases.choose(Optional.of(address));
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		OrderBook book = new OrderBook(studio);
		long number = book.add(new NewOrder("Banner", "Brindle Sound Ferries", Optional.empty(), 1, ""), "Ottoline").number();
		int kills = Integer.parseInt(System.getenv().getOrDefault("FRISKET_KILLS", Integer.toString(FEW)));
		Random random = new Random(31);
		long saved = 1;
		for (int kill = 0; kill < kills; kill++) {
			long told = runAndKill(studio, address, number, 1 + random.nextInt(3), random.nextInt(30));
			settle(address);
			StoredJob job = book.open(number);
			long there = job.entry().revision();
			// one more may have been kept that the program had no time to tell of
			assertTrue(there == told || there == told + 1, "told " + told + ", there " + there);
			assertTrue(there > saved, "nothing was saved");
			assertEquals(Long.toString(there), job.job().getNotes().split(" ")[0]);
			assertEquals(1 + Saver.words(there), job.job().getNotes().split(" ").length);
			saved = there;
		}
	}

	@Test
	void programThatEndsByItselfIsHeardOut() throws Exception {
		StudioFolder studio = new StudioFolder(home.resolve("studio"));
		new OrderBook(studio).add(new NewOrder("Banner", "", Optional.empty(), 1, ""), "Ottoline");
		AssertionError ended = assertThrows(AssertionError.class, () -> runAndKill(studio, "", 77, 1, 0));
		assertTrue(ended.getMessage().contains("by itself with 1 after it told of 0"), ended.getMessage());
		assertTrue(ended.getMessage().contains("no job 77"), ended.getMessage());
	}

	/** Waits until the server is done with what the killed program had sent it. */
	private static void settle(String address) throws Exception {
		boolean busy = !address.isEmpty();
		while (busy) {
			busy = Databases.<Boolean, SQLException>look(address, Optional.empty(), connection -> Sql.first(connection,
					"SELECT COUNT(*) > 0 FROM pg_stat_activity WHERE datname = CURRENT_CATALOG AND state <> 'idle' "
							+ "AND pid <> pg_backend_pid()",
					row -> row.getBoolean(1)).orElseThrow());
		}
	}

	/** @return the revision it told of last */
	private long runAndKill(StudioFolder studio, String address, long number, int after, int pauseMs) throws Exception {
		Path complaints = home.resolve("complaints.txt");
		Process saver = OtherProgram.of(Saver.class, studio.path().toString(), address, Long.toString(number))
				.redirectError(complaints.toFile()).start();
		long told = 0;
		try (BufferedReader out = new BufferedReader(new InputStreamReader(saver.getInputStream()))) {
			for (int i = 0; i < after; i++) {
				String line = out.readLine();
				if (line == null) {
					fail("the program ended by itself with " + saver.waitFor() + " after it told of " + told + ": "
							+ Files.readString(complaints));
				}
				told = Long.parseLong(line);
			}
			// into the middle of a save
			Thread.sleep(pauseMs);
			// the process itself would close the pipe
			saver.toHandle().destroyForcibly();
			saver.waitFor();
			for (String line = rest(out); line != null; line = rest(out)) {
				told = Long.parseLong(line);
			}
		}
		return told;
	}

	/** What is left in the pipe; a line that was cut off is none. */
	private static String rest(BufferedReader out) throws IOException {
		String line = out.readLine();
		return line == null || !line.matches("\\d+") ? null : line;
	}
}
