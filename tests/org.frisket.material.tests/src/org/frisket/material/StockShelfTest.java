package org.frisket.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.frisket.material.csv.RandomStock;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockShelfTest {

	@TempDir
	Path home;
	private Store store;
	private StockShelf shelf;

	@BeforeEach
	void open() throws Exception {
		store = Store.open(new StudioFolder(home.resolve("studio")), StockShelf.AREA);
		shelf = new StockShelf(store);
	}

	@AfterEach
	void close() throws Exception {
		store.close();
	}

	private static Stock card(String name) {
		return Stock.named(name).family(StockFamily.CARD).grammage(new BigDecimal(216)).build();
	}

	private static void assertShelf(String reason, org.junit.jupiter.api.function.Executable task) {
		ShelfException refused = assertThrows(ShelfException.class, task);
		assertTrue(refused.getMessage().contains(reason), refused.getMessage());
	}

	@Test
	void everyStockComesBackAsItIs() throws Exception {
		Random random = new Random(12);
		for (int i = 0; i < 60; i++) {
			Stock stock = RandomStock.of(random, i);
			shelf.add(stock);
			assertEquals(stock, shelf.find(stock.id()).orElseThrow().stock());
		}
		close();
		open();
		assertEquals(60, shelf.list().size());
		Random again = new Random(12);
		for (int i = 0; i < 60; i++) {
			Stock stock = RandomStock.of(again, i);
			assertEquals(Optional.of(new ShelvedStock(stock, 1)), shelf.find(stock.id()));
		}
	}

	@Test
	void namesAndIdsAreThereOnce() throws Exception {
		shelf.add(card("Harbour white"));
		assertShelf("named “HARBOUR  white”", () -> shelf.add(card("HARBOUR  white").change().id("other").build()));
		assertShelf("id “harbour-white”", () -> shelf.add(card("Else").change().id("harbour-white").build()));
		ShelvedStock second = shelf.add(card("Quay grey"));
		assertShelf("named “Harbour white”", () -> shelf.change(
				second.stock().change().name("Harbour white").build(), second.revision()));
		assertEquals(2, shelf.list().size());
		assertEquals("quay-grey", shelf.named("quay GREY").orElseThrow().stock().id());
	}

	@Test
	void whoChangesSaysWhatTheySaw() throws Exception {
		ShelvedStock seen = shelf.add(card("Harbour white"));
		ShelvedStock changed = shelf.change(seen.stock().change().colour("white").build(), seen.revision());
		assertEquals(seen.revision() + 1, changed.revision());
		assertShelf("changed by somebody else",
				() -> shelf.change(seen.stock().change().colour("grey").build(), seen.revision()));
		assertShelf("changed by somebody else", () -> shelf.remove(seen.stock().id(), seen.revision()));
		assertEquals("white", shelf.find("harbour-white").orElseThrow().stock().colour());
		shelf.remove("harbour-white", changed.revision());
		assertEquals(List.of(), shelf.list());
		assertShelf("no stock “harbour-white”", () -> shelf.remove("harbour-white", 1));
	}

	@Test
	void countingIsNeverLost() throws Exception {
		shelf.add(card("Harbour white"));
		assertEquals(new BigDecimal("12.5"), shelf.count("harbour-white", new BigDecimal("12.5")).stock().onHand());
		assertEquals(new BigDecimal("10"), shelf.count("harbour-white", new BigDecimal("-2.5")).stock().onHand());
		assertThrows(InvalidStockException.class, () -> shelf.count("harbour-white", new BigDecimal(-11)));
		assertShelf("no stock", () -> shelf.count("nothing", BigDecimal.ONE));
		assertEquals(BigDecimal.TEN, shelf.find("harbour-white").orElseThrow().stock().onHand());
	}

	@Test
	void manyAreTakenInWhollyOrNotAtAll() throws Exception {
		shelf.add(card("Harbour white"));
		shelf.add(card("Quay grey"));
		assertShelf("named “Quay grey”",
				() -> shelf.put(List.of(card("New"), card("Quay grey").change().id("other").build())));
		assertEquals(2, shelf.list().size());
		shelf.put(List.of(card("Quay grey").change().id("harbour-white").build(),
				card("Harbour white").change().id("quay-grey").build(), card("New")));
		assertEquals("Quay grey", shelf.find("harbour-white").orElseThrow().stock().name(), "names changed places");
		assertEquals(3, shelf.list().size());
		assertEquals(2, shelf.find("quay-grey").orElseThrow().revision());
	}
}
