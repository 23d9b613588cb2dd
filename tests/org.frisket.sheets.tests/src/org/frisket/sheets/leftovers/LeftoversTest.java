package org.frisket.sheets.leftovers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept of sheets. */
class LeftoversTest {

	@TempDir
	private Path folder;

	@Test
	void whatIsKeptIsAtHandUntilItIsUsed() throws IOException {
		StudioFolder studio = new StudioFolder(folder.resolve("studio"));
		try (Store store = Store.open(studio, Leftovers.AREA)) {
			Leftovers leftovers = new Leftovers(store);
			Leftover large = leftovers.keep("card", "#1d6f78", 120.00049, 80);
			Leftover small = leftovers.keep(null, null, 60, 50);
			assertEquals(120, large.width());
			assertEquals(List.of(small, large), leftovers.atHand());
			assertTrue(leftovers.use(small.id()));
			assertFalse(leftovers.use(small.id()));
			assertThrows(IllegalArgumentException.class, () -> leftovers.keep("card", null, 0, 80));
		}
		try (Store store = Store.open(studio, Leftovers.AREA)) {
			Leftovers leftovers = new Leftovers(store);
			assertEquals(List.of("leftover-1"), leftovers.atHand().stream().map(Leftover::id).toList());
			assertEquals("leftover-3", leftovers.keep("card", null, 70, 70).id());
		}
	}
}
