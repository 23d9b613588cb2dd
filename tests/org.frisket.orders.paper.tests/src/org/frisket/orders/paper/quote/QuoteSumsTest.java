package org.frisket.orders.paper.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

import org.frisket.geometry.options.OptionValues;
import org.junit.jupiter.api.Test;

/** Money adds up. */
class QuoteSumsTest {

	private static final Currency EUR = Currency.getInstance("EUR");
	private static final Currency AUD = Currency.getInstance("AUD");

	private static QuoteRules rules(String... optionsAndValues) {
		Map<String, String> texts = new HashMap<>();
		for (int i = 0; i < optionsAndValues.length; i += 2) {
			texts.put(optionsAndValues[i], optionsAndValues[i + 1]);
		}
		return QuoteOptions.rules(OptionValues.of(QuoteOptions.options(), texts));
	}

	private static CostLine line(CostLine.Kind kind, String amount, String tax) {
		return new CostLine(kind, "line", new BigDecimal(amount), new BigDecimal(tax));
	}

	private static List<CostLine> extras(String tax, String... amounts) {
		List<CostLine> lines = new ArrayList<>();
		for (String amount : amounts) {
			lines.add(line(CostLine.Kind.EXTRA, amount, tax));
		}
		return lines;
	}

	private static void assertMoney(String expected, BigDecimal amount) {
		assertEquals(new BigDecimal(expected), amount);
	}

	/**
	 * The two rules of A New Tax System (Goods and Services Tax) Act 1999 (Cth), section 9-90: subsection (2)(a) adds up what
	 * is not rounded and rounds once, (2)(b) rounds each supply; half a cent is rounded up in both. The rules are read there,
	 * at austlii.edu.au; the amounts are ours, worked by hand: 10 % of 1.05 is 0.105, and of three of them 0.315.
	 */
	@Test
	void taxIsRoundedOnceOrOnEachLineWithHalfACentUp() {
		List<CostLine> supplies = extras("10", "1.05", "1.05", "1.05");
		QuoteSums once = QuoteSums.of(supplies, AUD, rules());
		assertMoney("0.32", once.taxes().get(0).tax());
		assertMoney("3.47", once.total());
		QuoteSums each = QuoteSums.of(supplies, AUD, rules("rounding", "line"));
		assertMoney("0.33", each.taxes().get(0).tax());
		assertMoney("3.48", each.total());
		assertMoney("0.11", QuoteSums.of(extras("10", "1.05"), AUD, rules()).taxes().get(0).tax());
		assertMoney("0.10", QuoteSums.of(extras("10", "1.04"), AUD, rules()).taxes().get(0).tax());
	}

	/**
	 * EN 16931-1 as its validation rules state it: BR-CO-10, the sum of lines is that of their rounded amounts; BR-CO-17, the
	 * tax of a rate is its net times the rate, rounded to two decimals; BR-CO-14 and BR-CO-15, taxes and total are exact sums.
	 * The amounts are ours.
	 */
	@Test
	void eachRateIsTaxedByItself() {
		List<CostLine> lines = new ArrayList<>(extras("19", "33.33", "12.07"));
		lines.addAll(extras("7", "6.90"));
		QuoteSums sums = QuoteSums.of(lines, EUR, rules("tax", "19"));
		assertMoney("52.30", sums.sum());
		assertEquals(List.of(new TaxLine(new BigDecimal("7"), new BigDecimal("6.90"), new BigDecimal("0.48")),
				new TaxLine(new BigDecimal("19"), new BigDecimal("45.40"), new BigDecimal("8.63"))), sums.taxes());
		assertMoney("61.41", sums.total());
	}

	/**
	 * The worked example {@code rules/examples/Allowance-example.xml} of Peppol BIS Billing 3.0
	 * (github.com/OpenPEPPOL/peppol-bis-invoice-3): lines of 4000 and 900 at 25 % and of 1000 at none, a charge of 200 and a
	 * discount of 200 at 25 %. It says 5900 without tax, of which 4900 bear 1225 of tax, and 7125 with it. The discount is
	 * spread over all rates here, and is no line; it is left out together with the charge of the same amount.
	 */
	@Test
	void publishedInvoiceComesToTheSame() {
		List<CostLine> lines = new ArrayList<>(extras("25", "4000", "900"));
		lines.addAll(extras("0", "1000"));
		for (String rounding : new String[] { "total", "line" }) {
			QuoteSums sums = QuoteSums.of(lines, EUR, rules("rounding", rounding));
			assertMoney("5900.00", sums.net());
			assertEquals(List.of(new TaxLine(new BigDecimal("0"), new BigDecimal("1000.00"), new BigDecimal("0.00")),
					new TaxLine(new BigDecimal("25"), new BigDecimal("4900.00"), new BigDecimal("1225.00"))), sums.taxes());
			assertMoney("7125.00", sums.total());
		}
	}

	@Test
	void markUpsMinimumAndDiscountComeInThisOrder() {
		List<CostLine> lines = List.of(line(CostLine.Kind.MATERIAL, "0.90", "0"), line(CostLine.Kind.TIME, "3.15", "0"),
				line(CostLine.Kind.EXTRA, "1.00", "0"));
		QuoteSums sums = QuoteSums.of(lines, EUR, rules("material-mark-up", "25", "time-mark-up", "10", "minimum", "10",
				"discount", "12.5"));
		// 0.90 × 1.25 = 1.125; 3.15 × 1.10 = 3.465: both half up
		assertEquals(List.of("1.13", "3.47", "1.00", "4.40"), sums.lines().stream().map(line -> line.price().toString()).toList());
		assertEquals(CostLine.Kind.MINIMUM, sums.lines().get(3).kind());
		assertMoney("10.00", sums.sum());
		assertMoney("1.25", sums.discount());
		assertMoney("8.75", sums.total());
		assertMoney("5.05", sums.cost());
		assertEquals(List.of(), sums.taxes());
	}

	@Test
	void currencyWithoutCentsHasNone() {
		QuoteSums sums = QuoteSums.of(extras("10", "104.5"), Currency.getInstance("JPY"), rules());
		assertMoney("105", sums.sum());
		assertMoney("11", sums.taxes().get(0).tax());
		assertMoney("116", sums.total());
	}

	/** A hundred lines at an odd rate, of as much money as a job of a million pieces may come to, in whatever decimals. */
	@Test
	void manyLinesOfMuchMoneyAddUpInEveryCurrency() {
		Random random = new Random(2031);
		for (String code : new String[] { "EUR", "JPY", "BHD", "CLF" }) {
			List<CostLine> lines = new ArrayList<>();
			for (int i = 0; i < 100; i++) {
				lines.add(line(CostLine.Kind.values()[i % 3], BigDecimal.valueOf(random.nextLong(1_000_000_000_000_000L), 4).toPlainString(),
						i % 4 == 0 ? "0" : "8.875"));
			}
			for (String rounding : new String[] { "total", "line" }) {
				Currency currency = Currency.getInstance(code);
				QuoteSums sums = QuoteSums.of(lines, currency, rules("rounding", rounding, "discount", "3.3333", "material-mark-up", "33.3"));
				BigDecimal zero = BigDecimal.ZERO.setScale(QuoteSums.decimals(currency));
				assertEquals(sums.sum(), sums.lines().stream().map(QuoteLine::price).reduce(zero, BigDecimal::add), code);
				assertEquals(sums.discount(), sums.lines().stream().map(QuoteLine::discount).reduce(zero, BigDecimal::add), code);
				assertEquals(sums.net(), sums.taxes().stream().map(TaxLine::net).reduce(zero, BigDecimal::add), code);
				assertEquals(sums.total(), sums.taxes().stream().map(TaxLine::tax).reduce(sums.net(), BigDecimal::add), code);
				assertEquals(zero, sums.taxes().get(0).tax(), code);
				assertTrue(sums.lines().stream().allMatch(line -> line.net().signum() >= 0), code);
			}
		}
	}

	@Test
	void whateverIsAskedForAllSumsHoldExactly() {
		Random random = new Random(20270301);
		String[] rates = { "0", "7", "19", "8.1", "20" };
		for (int round = 0; round < 2000; round++) {
			List<CostLine> lines = new ArrayList<>();
			int count = random.nextInt(12);
			for (int i = 0; i < count; i++) {
				CostLine.Kind kind = CostLine.Kind.values()[random.nextInt(3)];
				lines.add(line(kind, BigDecimal.valueOf(random.nextInt(1_000_000), random.nextInt(5)).toPlainString(),
						rates[random.nextInt(rates.length)]));
			}
			QuoteRules rules = rules("material-mark-up", random.nextInt(200) + ".5", "time-mark-up", "" + random.nextInt(300),
					"minimum", "" + random.nextInt(200), "discount", round % 7 == 0 ? "100" : random.nextInt(100) + "." + random.nextInt(10),
					"rounding", random.nextBoolean() ? "line" : "total", "tax", rates[random.nextInt(rates.length)]);
			QuoteSums sums = QuoteSums.of(lines, EUR, rules);
			String about = round + ": " + sums;
			assertEquals(sums.sum(), sum(sums.lines().stream().map(QuoteLine::price).toList()), about);
			assertEquals(sums.discount(), sum(sums.lines().stream().map(QuoteLine::discount).toList()), about);
			assertEquals(sums.net(), sum(sums.lines().stream().map(QuoteLine::net).toList()), about);
			assertTrue(sums.lines().stream().allMatch(line -> line.net().signum() >= 0), about);
			assertTrue(sums.sum().compareTo(rules.minimum()) >= 0, about);
			BigDecimal taxes = sum(sums.taxes().stream().map(TaxLine::tax).toList());
			assertEquals(sums.total(), sums.net().add(taxes), about);
			if (!sums.taxes().isEmpty()) {
				assertEquals(sums.net(), sum(sums.taxes().stream().map(TaxLine::net).toList()), about);
			}
			for (TaxLine tax : sums.taxes()) {
				BigDecimal exact = tax.net().multiply(tax.rate()).movePointLeft(2);
				long taxed = sums.lines().stream().filter(line -> line.rate().compareTo(tax.rate()) == 0).count();
				BigDecimal most = new BigDecimal("0.005").multiply(new BigDecimal(rules.rounding() == Rounding.LINE ? taxed : 1));
				assertTrue(exact.subtract(tax.tax()).abs().compareTo(most) <= 0, about);
			}
		}
	}

	private static BigDecimal sum(List<BigDecimal> amounts) {
		return amounts.stream().reduce(BigDecimal.ZERO.setScale(2), BigDecimal::add);
	}

	@Test
	void typedExtrasAreRead() {
		List<Extra> extras = Extra.parse("Gift boxes = 12.50; Delivery=6,90 @ 7 %;");
		assertEquals(List.of(new Extra("Gift boxes", new BigDecimal("12.50"), Optional.empty()),
				new Extra("Delivery", new BigDecimal("6.90"), Optional.of(new BigDecimal("7")))), extras);
		for (String wrong : new String[] { "Delivery", "=3", "Delivery=-3", "Delivery=3 EUR", "Delivery=3@101" }) {
			String message = assertThrows(IllegalArgumentException.class, () -> Extra.parse(wrong)).getMessage();
			assertTrue(message.contains(wrong), message);
		}
		assertThrows(IllegalArgumentException.class, () -> rules("currency", "XYZ!"));
		assertThrows(IllegalArgumentException.class, () -> rules("discount", "101"));
	}
}
