package org.frisket.orders.paper.quote;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.options.OptionValues;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Guest;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Outline;
import org.frisket.model.Sheet;
import org.frisket.orders.paper.DocketFacts;
import org.frisket.orders.paper.JobWork;
import org.frisket.orders.paper.SamplePapers;
import org.frisket.run.Rate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quotes of jobs, and how poppler reads them. */
class QuotePaperTest {

	private static final LocalDate DAY = LocalDate.of(2027, 2, 12);

	private static Locale usual;

	@TempDir
	private Path folder;

	@BeforeAll
	static void inEnglish() {
		usual = Locale.getDefault();
		Locale.setDefault(Locale.ENGLISH);
	}

	@AfterAll
	static void giveTheLanguageBack() {
		Locale.setDefault(usual);
	}

	private static QuoteSheet quote(JobWork work, Optional<Rate> rate, Map<String, String> options) {
		return QuoteSheet.of(work, rate, QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), options)), Optional.of(DAY));
	}

	private static Map<String, String> usual() {
		return new HashMap<>(Map.of("material-mark-up", "30", "set-up", "10", "extras", "Ribbon=4.80; Delivery=6.90@7", "tax", "19"));
	}

	@Test
	void sheetsTimeAndExtrasArePriced() {
		JobWork work = SamplePapers.work(SamplePapers.tags());
		QuoteSheet quote = quote(work, SamplePapers.rate(), usual());
		List<QuoteLine> lines = quote.sums().lines();
		assertEquals(List.of("Harbour blue 216 g, sheets: 2", "Setting up, 10 min", "Ribbon", "Delivery"),
				lines.stream().filter(line -> !line.name().startsWith("Machine time")).map(QuoteLine::name).toList());
		assertEquals(new BigDecimal("0.90"), lines.get(0).cost());
		assertEquals(new BigDecimal("1.17"), lines.get(0).price());
		// 36 EUR an hour are 0.01 EUR a second
		BigDecimal seconds = new BigDecimal(DocketFacts.of(work, SamplePapers.A4).seconds());
		assertEquals(seconds.movePointLeft(2).setScale(2, RoundingMode.HALF_UP), lines.get(1).cost());
		assertEquals(new BigDecimal("6.00"), lines.get(2).cost());
		assertEquals(List.of(new BigDecimal("7"), new BigDecimal("19.0")), quote.sums().taxes().stream().map(TaxLine::rate).toList());
		assertFalse(quote.isDraft());
		assertEquals(Optional.of(LocalDate.of(2027, 3, 14)), quote.validUntil());
	}

	@Test
	void paperSaysEveryLineAndSum() throws Exception {
		QuoteSheet quote = quote(SamplePapers.work(SamplePapers.tags()), SamplePapers.rate(), usual());
		byte[] pdf = SamplePapers.bytes(out -> QuotePaper.write(quote, SamplePapers.A4, out));
		SamplePapers.check(pdf, folder);
		String text = SamplePapers.words(pdf, folder);
		for (QuoteLine line : quote.sums().lines()) {
			assertTrue(text.contains(line.name()) && text.contains(line.price() + " EUR"), line + " in " + text);
		}
		for (String word : new String[] { "10247", "Tern Bookshop", "Friday, February 12, 2027", "Sunday, March 14, 2027",
				"Total " + quote.sums().total() + " EUR", "Tax 7 % on 6.90 EUR" }) {
			assertTrue(text.contains(word), word + " in " + text);
		}
		assertFalse(text.contains("mark-up"), "what is added is none of the customer's business: " + text);
		assertArrayEquals(pdf, SamplePapers.bytes(out -> QuotePaper.write(quote, SamplePapers.A4, out)));
		byte[] costs = SamplePapers.bytes(out -> QuotePaper.writeCosts(quote, SamplePapers.A4, out));
		SamplePapers.check(costs, folder);
		String inside = SamplePapers.words(costs, folder);
		assertTrue(inside.contains("0.90 EUR 30 % 1.17 EUR") && inside.contains("For the studio only"), inside);
		assertTrue(inside.contains("All costs " + quote.sums().cost() + " EUR"), inside);
	}

	@Test
	void whatNobodyKnowsThePriceOfMakesADraft() throws Exception {
		Job job = SamplePapers.tags();
		job.getSheets().get(1).setStock("nobody-knows");
		QuoteSheet quote = quote(SamplePapers.work(job), Optional.empty(), Map.of());
		assertEquals(2, quote.gaps().size(), quote.gaps().toString());
		String text = SamplePapers.words(SamplePapers.bytes(out -> QuotePaper.write(quote, SamplePapers.A4, out)), folder);
		assertTrue(text.contains("Draft, not to be sent: The price of nobody-knows is not known"), text);
		assertTrue(text.contains("There is no rate for the time"), text);
		assertTrue(text.contains("No tax is added."), text);
	}

	@Test
	void ofAGangedSheetOnlyTheShareIsAskedFor() {
		Job host = SamplePapers.tags();
		Job guest = Jobs.create("guest", "Place cards");
		Outline card = SamplePapers.outline(guest, "Ivory", "#fffff0", "harbour-blue", "Card", "M0 0H80V50H0Z");
		Guest known = FrisketFactory.INSTANCE.createGuest();
		known.setJob("guest");
		host.getGuests().add(known);
		Sheet sheet = host.getSheets().get(0);
		for (int i = 3; i < 6; i++) {
			sheet.getPlacements().get(i).setJob("guest");
			sheet.getPlacements().get(i).setPart(card.getId());
		}
		QuoteSheet quote = quote(SamplePapers.work(host, SamplePapers.workshop(), SamplePapers.rate(), Map.of("guest", guest)),
				SamplePapers.rate(), Map.of());
		QuoteLine material = quote.sums().lines().get(0);
		assertEquals("Harbour blue 216 g, share of sheets: 2", material.name());
		// half of one sheet, 0.225, with the odd cent to the one that comes first, and the whole other one
		assertEquals(new BigDecimal("0.68"), material.cost());
	}

	@Test
	void currenciesAreNotMixed() {
		JobWork work = SamplePapers.work(SamplePapers.tags());
		String mixed = assertThrows(IllegalArgumentException.class,
				() -> quote(work, Optional.of(Rate.parse("30 CHF")), Map.of())).getMessage();
		assertTrue(mixed.contains("CHF") && mixed.contains("EUR"), mixed);
		JobWork nothing = SamplePapers.work(Jobs.create("none", "Ferry banner"));
		assertThrows(IllegalArgumentException.class, () -> quote(nothing, Optional.empty(), Map.of()));
		QuoteSheet extras = quote(nothing, Optional.empty(), Map.of("currency", "eur", "extras", "Design=40"));
		assertEquals(new BigDecimal("40.00"), extras.sums().total());
		assertTrue(extras.isDraft());
	}
}
