package org.frisket.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.frisket.material.weights.BasisWeight;
import org.frisket.material.weights.Grade;
import org.frisket.material.weights.MeasureException;
import org.frisket.material.weights.Thickness;
import org.frisket.studio.NameKey;
import org.junit.jupiter.api.Test;

class StockTest {

	private static BigDecimal number(String text) {
		return new BigDecimal(text);
	}

	private static StockBuilder card() {
		return Stock.named("Harbour white").family(StockFamily.CARD).grammage(number("216"));
	}

	private static void assertRefused(StockField field, String reason, StockBuilder stock) {
		InvalidStockException refused = assertThrows(InvalidStockException.class, stock::build);
		assertEquals(field, refused.field(), refused.getMessage());
		assertTrue(refused.getMessage().contains(reason), refused.getMessage());
	}

	@Test
	void whatIsNotSaidHasADefault() {
		Stock stock = card().build();
		assertEquals("harbour-white", stock.id());
		assertEquals(BigDecimal.ZERO, stock.onHand());
		assertEquals(BigDecimal.ONE, stock.abrasion());
		assertEquals(Optional.empty(), stock.bulk());
		assertFalse(stock.isLow());
		assertEquals(stock, stock.change().build());
	}

	@Test
	void caliperIsEstimatedFromTheWeightAndSaysSo() {
		Caliper smooth = card().finish(Finish.SMOOTH).build().caliper().orElseThrow();
		assertEquals(Caliper.Source.ESTIMATED, smooth.source());
		assertEquals(number("0.2592"), smooth.thickness().mm());
		Caliper measured = card().caliper(new Thickness(number("0.29"))).build().caliper().orElseThrow();
		assertEquals(Caliper.Source.MEASURED, measured.source());
		assertEquals(1.3426, card().caliper(new Thickness(number("0.29"))).build().bulk().orElseThrow().value().doubleValue(),
				1e-4);
	}

	@Test
	void valuesThatCannotBeAreRefused() {
		assertRefused(StockField.GRAMMAGE, "not above zero", card().grammage(BigDecimal.ZERO));
		assertRefused(StockField.GRAMMAGE, "not above zero", card().grammage(number("-80")));
		assertRefused(StockField.GRAMMAGE, "beyond the 5000", card().grammage(number("10000")));
		assertRefused(StockField.GRAMMAGE, "decimals", card().grammage(number("1.0000001")));
		assertRefused(StockField.GRAMMAGE, "one is needed", card().grammage(null));
		assertRefused(StockField.NAME, "name is missing", card().name(" "));
		assertRefused(StockField.NAME, "name is missing", Stock.named(null).family(StockFamily.CARD));
		assertRefused(StockField.NAME, "201 characters", card().name("x".repeat(201)));
		assertRefused(StockField.NAME, "control characters", card().name("a\nb"));
		assertRefused(StockField.NOTES, "control characters", card().notes("a\u0000b"));
		assertRefused(StockField.COLOUR, "control characters", card().colour("\uD800"));
		assertRefused(StockField.FAMILY, "family is missing", card().family(null));
		assertRefused(StockField.ID, "no id", card().id("Not An Id"));
		assertRefused(StockField.ON_HAND, "below zero", card().onHand(number("-1")));
		assertRefused(StockField.ABRASION, "not above zero", card().abrasion(BigDecimal.ZERO));
		assertRefused(StockField.PRICE, "price of -1", card().price(number("-1")).currency(Price.currency("EUR")));
		assertRefused(StockField.CURRENCY, "no currency", card().price(number("1")));
		assertRefused(StockField.GRADE, "pounds without a grade", card().pounds(number("80")));
		assertThrows(InvalidStockException.class, () -> Price.currency("EURO"));
		assertThrows(MeasureException.class, () -> new BasisWeight(number("9999"), Grade.COVER));
	}

	@Test
	void mixedGradesAreToldWithTheOneThatIsMeant() {
		assertRefused(StockField.BASIS_WEIGHT, "65 lb cover is 175.8 g/m², not 244 g/m². Is 65 lb bond meant?",
				card().grammage(number("244")).basisWeight(new BasisWeight(number("65"), Grade.COVER)));
		Stock both = card().basisWeight(new BasisWeight(number("80"), Grade.COVER)).build();
		assertEquals(number("216"), both.grammage().orElseThrow(), "rounded as packs are");
	}

	@Test
	void millimetresForMilsAreSeen() {
		assertRefused(StockField.CALIPER, "are mm and mils mixed up", card().caliper(new Thickness(number("12"))));
		card().family(StockFamily.FOAM).caliper(new Thickness(number("12"))).build();
	}

	@Test
	void numberOnHandGoesUpAndDownButNotBelowNone() {
		Stock stock = card().onHand(number("10")).lowWater(number("4")).build();
		assertFalse(stock.isLow());
		assertTrue(stock.withMore(number("-6")).isLow());
		assertEquals(number("10"), stock.withMore(number("-6")).withMore(number("6")).onHand());
		assertThrows(InvalidStockException.class, () -> stock.withMore(number("-10.5")));
	}

	@Test
	void idsAreReadable() {
		assertEquals("weisser-karton-80-lb", StockIds.of("Weißer  Kartön 80 lb!"));
		assertEquals("stock", StockIds.of("紙"));
		assertEquals("card-3", StockIds.free("Card", List.of("card", "card-2")::contains));
		assertEquals(NameKey.of("Harbour  White"), NameKey.of("HARBOUR WHITE "));
	}
}
