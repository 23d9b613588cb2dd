package org.frisket.orders.paper.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;
import org.frisket.run.Rate;
import org.frisket.studio.StudioFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A studio says once how its quotes are made. */
class StudioQuoteTest {

	@TempDir
	Path folder;

	private StudioFolder studio;
	private StudioQuote quote;

	@BeforeEach
	void open() throws Exception {
		studio = new StudioFolder(folder.resolve("studio")).openForWriting();
		quote = new StudioQuote(studio);
	}

	@Test
	void studioThatHasSaidNothingHasTheDefaults() throws Exception {
		assertEquals(QuoteOptions.rules(OptionValues.defaults(QuoteOptions.options())), quote.rules(Map.of()));
		for (Option option : StudioQuote.options()) {
			assertEquals(option.initial(), quote.texts().get(option.name()));
		}
	}

	@Test
	void whatIsKeptHoldsUnlessAQuoteSaysOtherwise() throws Exception {
		quote.keep(Map.of("tax", "19", "material-mark-up", "25", "rate", "36.00 EUR", "rounding", "line"));
		QuoteRules kept = new StudioQuote(studio).rules(Map.of());
		assertEquals(0, new BigDecimal(19).compareTo(kept.tax()));
		assertEquals(Rounding.LINE, kept.rounding());
		assertEquals(Rate.parse("36 EUR").hour().currency(), Rate.of(studio).orElseThrow().hour().currency());
		QuoteRules otherwise = quote.rules(Map.of("tax", "7"));
		assertEquals(0, new BigDecimal(7).compareTo(otherwise.tax()));
		assertEquals(kept.material(), otherwise.material());
		// what was kept before and is not said again stays
		quote.keep(Map.of("tax", "20"));
		assertEquals("25", quote.texts().get("material-mark-up"));
		assertEquals(StudioQuote.check(quote.texts()), quote.rules(Map.of()));
	}

	@Test
	void nothingIsKeptIfOneValueIsWrong() throws Exception {
		for (Map.Entry<String, String> wrong : Map.of("tax", "101", "extras", "Ribbon", "currency", "XYZ!", "rate", "36",
				"rounding", "never").entrySet()) {
			Map<String, String> texts = new HashMap<>(Map.of("discount", "5"));
			texts.put(wrong.getKey(), wrong.getValue());
			assertThrows(IllegalArgumentException.class, () -> quote.keep(texts), wrong.toString());
			assertEquals("0", quote.texts().get("discount"), wrong.toString());
		}
	}

	@Test
	void wrongPreferenceIsNamedWithItsPlaceAndMendedByWhatAQuoteSays() throws Exception {
		studio.preferences().put("quote.tax", "much");
		String message = assertThrows(IllegalArgumentException.class, () -> quote.rules(Map.of())).getMessage();
		assertTrue(message.contains("quote.tax") && message.contains(studio.path().toString()) && message.contains("much"), message);
		assertEquals(0, new BigDecimal(19).compareTo(quote.rules(Map.of("tax", "19")).tax()));
	}
}
