package org.frisket.material.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;

import org.frisket.material.Stock;
import org.frisket.material.StockBuilder;
import org.frisket.material.StockFamily;
import org.frisket.material.weights.GradeMatch;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Thickness;
import org.junit.jupiter.api.Test;

class ShelfListTest {

	private static final List<Stock> STOCKS = List.of(
			stock("Quay white", StockFamily.PAPER, 80).onHand(new BigDecimal(200)).notes("Crème envelope").build(),
			stock("Harbour red", StockFamily.CARD, 216).onHand(new BigDecimal(3)).lowWater(new BigDecimal(5)).build(),
			Stock.named("Ferry film").family(StockFamily.FILM).caliper(new Thickness(new BigDecimal("0.08"))).build());

	private static StockBuilder stock(String name, StockFamily family, int grammage) {
		return Stock.named(name).family(family).grammage(new BigDecimal(grammage));
	}

	private static List<String> find(String words, ShelfOrder order, boolean low) {
		return new ShelfList<>(STOCKS, Function.identity(), stock -> "measured " + stock.family()).find(words, order, low)
				.stream().map(Stock::name).toList();
	}

	@Test
	void wordsAreFoundAnywhereByTheirBeginnings() {
		assertEquals(List.of("Harbour red"), find("red", ShelfOrder.NAME, false));
		assertEquals(List.of("Quay white"), find(" creme WHI", ShelfOrder.NAME, false));
		assertEquals(List.of("Harbour red"), find("216 card", ShelfOrder.NAME, false));
		assertEquals(List.of(), find("red white", ShelfOrder.NAME, false));
		assertEquals(3, find("", ShelfOrder.NAME, false).size());
		assertEquals(List.of("Harbour red"), find("", ShelfOrder.NAME, true));
	}

	@Test
	void everyOrderHasAllOfThem() {
		assertEquals(List.of("Ferry film", "Harbour red", "Quay white"), find("", ShelfOrder.NAME, false));
		assertEquals(List.of("Harbour red", "Quay white", "Ferry film"), find("", ShelfOrder.FAMILY, false));
		assertEquals(List.of("Quay white", "Harbour red", "Ferry film"), find("", ShelfOrder.GRAMMAGE, false));
		assertEquals(List.of("Harbour red", "Ferry film", "Quay white"), find("", ShelfOrder.ON_HAND, false));
	}

	@Test
	void coloursAreReadFromTexts() {
		assertEquals(OptionalInt.of(0x1b6f6a), PaperColour.of("harbour blue #1B6F6A"));
		assertEquals(PaperColour.of("grün"), PaperColour.of("Dark Green"));
		assertEquals(PaperColour.of("white"), PaperColour.of("weiß, matt"));
		assertEquals(OptionalInt.empty(), PaperColour.of("tartan"));
		assertEquals(OptionalInt.empty(), PaperColour.of("#1b6f6a0"), "too long");
		assertEquals("#0a0b0c", PaperColour.hex(0x0a0b0c));
	}

	/** 65 lb cover is 175.8 g/m²: 65 lb of 453.59237 g to 500 sheets of 20 × 26 in (TAPPI T 410). */
	@Test
	void packIsStudied() {
		assertEquals("175.7", PackStudy.weigh("65", "12x12in", "10", "163,2").grammage().toPlainString());
		PackStudy.Weighed weighed = PackStudy.weigh("65 lb", "12x12in", "10", "163.3 g");
		assertEquals("65 lb cover", weighed.matches().get(0).weight().toString());
		assertTrue(weighed.matches().get(0).sureness() != GradeMatch.Sureness.NO);
		assertEquals(new BigDecimal("0.25"), PackStudy.measure(12.5, "50").mm());
		assertTrue(PackStudy.hasPounds("80 lb cover") && PackStudy.hasPounds("65"));
		assertFalse(PackStudy.hasPounds("216 g/m2") || PackStudy.hasPounds("") || PackStudy.hasPounds("velvet"));
		assertThrows(MeasureException.class, () -> PackStudy.weigh("", "12x12in", "ten", "163 g"));
	}
}
