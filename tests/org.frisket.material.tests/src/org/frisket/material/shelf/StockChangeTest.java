package org.frisket.material.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Random;

import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockExchange;
import org.frisket.material.StockFamily;
import org.frisket.material.StockShelf;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockChangeTest {

	@TempDir
	Path home;
	private StudioFolder studio;
	private Store store;
	private StockShelf shelf;

	@BeforeEach
	void open() throws Exception {
		studio = new StudioFolder(home.resolve("studio"));
		store = Store.open(studio, StockShelf.AREA);
		shelf = new StockShelf(store);
	}

	@AfterEach
	void close() throws Exception {
		store.close();
	}

	private static Stock card(String name) {
		return Stock.named(name).family(StockFamily.CARD).grammage(new BigDecimal(216)).build();
	}

	private List<Stock> stocks() throws Exception {
		return shelf.list().stream().map(ShelvedStock::stock).toList();
	}

	/** A walk of random changes leads back to where it began, and forth again, as long as nobody else is there. */
	@Test
	void everyWalkLeadsBackAndForth() throws Exception {
		for (int seed = 0; seed < 8; seed++) {
			Random random = new Random(seed);
			List<Stock> before = stocks();
			Deque<StockChange> done = new ArrayDeque<>();
			for (int i = 0; i < 12; i++) {
				StockChange change = random(random, shelf.list(), seed * 100 + i);
				change.run(shelf);
				done.push(change);
			}
			List<Stock> after = stocks();
			for (StockChange change : done) {
				change.run(shelf);
			}
			assertEquals(before, stocks());
			List<StockChange> again = new ArrayList<>(done);
			Collections.reverse(again);
			for (StockChange change : again) {
				change.run(shelf);
			}
			assertEquals(after, stocks());
		}
	}

	private static StockChange random(Random random, List<ShelvedStock> there, int number) {
		if (there.isEmpty() || random.nextInt(3) == 0) {
			return StockChange.put(List.of(card("Harbour " + number), card("Quay " + number)), there);
		}
		ShelvedStock one = there.get(random.nextInt(there.size()));
		return new StockChange(List.of(random.nextBoolean() ? StockExchange.remove(one)
				: StockExchange.change(one, one.stock().change().name("Ferry " + number).build())));
	}

	@Test
	void namesMayChangePlaces() throws Exception {
		shelf.put(List.of(card("Harbour"), card("Quay")));
		ShelvedStock harbour = shelf.find("harbour").orElseThrow();
		ShelvedStock quay = shelf.find("quay").orElseThrow();
		StockChange swap = new StockChange(
				List.of(StockExchange.change(harbour, harbour.stock().change().name("Quay").build()),
						StockExchange.change(quay, quay.stock().change().name("Harbour").build())));
		swap.run(shelf);
		assertEquals("Quay", shelf.find("harbour").orElseThrow().stock().name());
		swap.run(shelf);
		assertEquals(List.of(harbour.stock(), quay.stock()), stocks());
	}

	@Test
	void whatSomebodyElseChangedIsNotTakenBack() throws Exception {
		StockChange add = StockChange.put(List.of(card("Harbour"), card("Quay")), List.of());
		add.run(shelf);
		ShelvedStock seen = shelf.find("harbour").orElseThrow();
		shelf.change(seen.stock().change().notes("Score twice").build(), seen.revision());
		List<Stock> before = stocks();
		ShelfException refused = assertThrows(ShelfException.class, () -> add.run(shelf));
		assertTrue(refused.getMessage().contains("“Harbour” has been changed by somebody else"), refused.getMessage());
		assertEquals(before, stocks(), "nor is the rest of it");
	}

	@Test
	void whatCameBackIsNotTakenForWhatWasSeenBefore() throws Exception {
		ShelvedStock seen = shelf.add(card("Harbour"));
		StockChange remove = new StockChange(List.of(StockExchange.remove(seen)));
		remove.run(shelf);
		remove.run(shelf);
		assertEquals(seen.stock(), shelf.find("harbour").orElseThrow().stock());
		assertThrows(ShelfException.class, () -> shelf.change(seen.stock(), seen.revision()));
	}

	@Test
	void takenIdsAndNamesAreRefused() throws Exception {
		shelf.add(card("Harbour"));
		assertThrows(ShelfException.class, () -> StockChange.put(List.of(card("Harbour")), List.of()).run(shelf));
		assertThrows(ShelfException.class,
				() -> StockChange.put(List.of(card("HARBOUR").change().id("other").build()), List.of()).run(shelf));
		assertEquals(1, stocks().size());
	}

	@Test
	void changesAreSeenByALookAtAFileAndLookingIsNone() throws Exception {
		String before = Store.revision(studio);
		shelf.list();
		close();
		open();
		shelf.list();
		assertEquals(before, Store.revision(studio));
		shelf.add(card("Harbour"));
		assertNotEquals(before, Store.revision(studio));
	}
}
