package org.frisket.studio.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
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
import java.util.List;
import java.util.Random;

import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that H2 cannot open is let go: a backup can take its place, and other desks can look at it. */
class DamagedFileTest {

	private static final Area SHELVES = new Area("shelves", DamagedFileTest.class, "first");
	private static final int STEP = 2048;
	private static final int SCRATCH = 4096;

	@TempDir
	Path home;

	private StudioFolder studio;
	private Path file;
	private byte[] whole;

	@BeforeEach
	void keepSomething() throws IOException {
		studio = new StudioFolder(home.resolve("Harbour Lane"));
		file = studio.database();
		try (Store store = Store.open(studio, SHELVES)) {
			for (int i = 0; i < 20; i++) {
				String label = "card " + i;
				store.change(connection -> Sql.update(connection, "INSERT INTO shelf (label) VALUES (?)", label));
			}
		}
		whole = Files.readAllBytes(file);
	}

	private List<String> labels() throws IOException {
		try (Store store = Store.openForReading(studio, SHELVES)) {
			return store.read(connection -> Sql.list(connection, "SELECT label FROM shelf ORDER BY id", row -> row.getString(1)));
		}
	}

	private void assertLetGo(Object where) throws IOException {
		try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE); FileLock lock = channel.tryLock()) {
			assertNotNull(lock);
		} catch (OverlappingFileLockException e) {
			fail("this program holds the file that is damaged at " + where, e);
		}
	}

	@Test
	void damagedFileIsLetGoWhereverItIsDamaged() throws Exception {
		Random random = new Random(3);
		byte[] scratch = new byte[SCRATCH];
		int refused = 0;
		for (int at = 0; at < whole.length - SCRATCH; at += STEP) {
			byte[] damaged = whole.clone();
			random.nextBytes(scratch);
			System.arraycopy(scratch, 0, damaged, at, SCRATCH);
			Files.write(file, damaged);
			try {
				labels();
			} catch (StoreException e) {
				refused++;
				assertTrue(e.reason().contains("damaged") || e.reason().contains("were kept"), e.getMessage());
			}
			assertLetGo(at);
		}
		assertTrue(refused > 3, refused + " of " + whole.length / STEP);
		Files.write(file, whole);
		assertEquals(21, labels().size());
	}

	@Test
	void fileThatIsNoneIsLetGo() throws Exception {
		for (byte[] none : List.of(new byte[whole.length], "Harbour Lane".repeat(1000).getBytes())) {
			Files.write(file, none);
			assertThrows(StoreException.class, this::labels);
			assertThrows(StoreException.class, () -> Store.open(studio, SHELVES));
			assertLetGo("all places");
		}
	}
}
