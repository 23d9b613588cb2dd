package org.frisket.material.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.frisket.material.Caliper;
import org.frisket.material.Stock;
import org.frisket.material.StockFamily;
import org.frisket.material.StockField;
import org.frisket.material.csv.RandomStock;
import org.frisket.material.weights.Grade;
import org.junit.jupiter.api.Test;

class StockDraftTest {

	private static StockDraft card(String name) {
		StockDraft draft = StockDraft.empty(false);
		draft.set(StockField.NAME, name);
		draft.set(StockField.GRAMMAGE, "216");
		return draft;
	}

	@Test
	void everyStockIsReadBackFromItsForm() {
		Random random = new Random(7);
		for (int i = 0; i < 200; i++) {
			Stock stock = RandomStock.of(random, i);
			StockDraft draft = StockDraft.of(stock, false);
			assertEquals(Optional.of(stock), draft.stock());
			assertFalse(draft.isChanged());
		}
	}

	@Test
	void unitsAreReadAndBareNumbersAreInTheStudiosUnit() {
		StockDraft draft = card("Harbour");
		draft.set(StockField.GRAMMAGE, "216 g/m²");
		draft.set(StockField.CALIPER, "0,3");
		Stock stock = draft.stock().orElseThrow();
		assertEquals(new BigDecimal("0.3"), stock.statedCaliper().orElseThrow().thickness().mm());
		assertEquals(Caliper.Source.MEASURED, stock.statedCaliper().orElseThrow().source());
		draft.set(StockField.CALIPER, "12 mil");
		// 12 mil = 12 × 0.0254 mm by definition
		assertEquals(new BigDecimal("0.3048"), draft.stock().orElseThrow().statedCaliper().orElseThrow().thickness().mm());
		StockDraft inches = StockDraft.like(draft.stock().orElseThrow(), true);
		assertEquals("12 mil", inches.text(StockField.CALIPER));
		inches.set(StockField.CALIPER, "10");
		assertEquals(new BigDecimal("0.254"), inches.stock().orElseThrow().statedCaliper().orElseThrow().thickness().mm());
		draft.set(StockField.GRAMMAGE, "");
		draft.set(StockField.CALIPER, "");
		draft.set(StockField.BASIS_WEIGHT, "65 lb cover");
		assertEquals(Grade.COVER, draft.stock().orElseThrow().basisWeight().orElseThrow().grade());
	}

	@Test
	void allThatIsWrongIsToldAtOnceByField() {
		StockDraft draft = StockDraft.empty(false);
		draft.set(StockField.CALIPER, "thick");
		draft.set(StockField.PRICE, "0,45");
		draft.set(StockField.LOW_WATER, "-1");
		draft.set(StockField.SIZES, "A4\nsome size");
		assertEquals(Set.of(StockField.NAME, StockField.CALIPER, StockField.CURRENCY, StockField.LOW_WATER, StockField.SIZES),
				draft.problems().keySet());
		assertTrue(draft.problems().get(StockField.SIZES).contains("some size"));
		assertTrue(draft.stock().isEmpty());
		draft.set(StockField.CALIPER, "");
		assertTrue(draft.problems().containsKey(StockField.GRAMMAGE), "one measure is needed");
	}

	@Test
	void signedNumbersCountUpAndDown() {
		Stock stock = card("Harbour").stock().orElseThrow().change().onHand(new BigDecimal(40)).build();
		StockDraft draft = StockDraft.of(stock, false);
		draft.set(StockField.ON_HAND, "+25");
		assertEquals(new BigDecimal(65), draft.stock().orElseThrow().onHand());
		draft.set(StockField.ON_HAND, "-3,5");
		assertEquals(new BigDecimal("36.5"), draft.stock().orElseThrow().onHand());
		draft.set(StockField.ON_HAND, "-41");
		assertEquals(Set.of(StockField.ON_HAND), draft.problems().keySet());
	}

	@Test
	void changesOfTwoDesksComeTogether() {
		Stock stock = card("Harbour").stock().orElseThrow();
		StockDraft mine = StockDraft.of(stock, false);
		mine.set(StockField.NOTES, "Score twice");
		Stock theirs = stock.change().onHand(BigDecimal.TEN).name("Harbour white").build();
		Stock both = mine.onto(theirs).stock().orElseThrow();
		assertEquals(theirs.change().notes("Score twice").build(), both);
		assertEquals(StockFamily.CARD, both.family());
	}

	@Test
	void idIsOnesOwnOnceAndStaysThen() {
		StockDraft draft = card("Harbour");
		draft.set(StockField.ID, "shelf-7");
		Stock stock = draft.stock().orElseThrow();
		assertEquals("shelf-7", stock.id());
		StockDraft later = StockDraft.of(stock, false);
		later.set(StockField.ID, "other");
		later.set(StockField.NAME, "Quay");
		assertEquals("shelf-7", later.stock().orElseThrow().id());
		assertEquals("quay", rename(StockDraft.like(stock, false)).stock().orElseThrow().id());
		draft.set(StockField.ID, "No id");
		assertEquals(Set.of(StockField.ID), draft.problems().keySet());
	}

	private static StockDraft rename(StockDraft draft) {
		draft.set(StockField.NAME, "Quay");
		return draft;
	}
}
