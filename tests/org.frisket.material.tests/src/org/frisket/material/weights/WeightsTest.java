package org.frisket.material.weights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;

import org.frisket.material.weights.GradeMatch.Sureness;
import org.junit.jupiter.api.Test;

class WeightsTest {

	private static final int CASES = 2000;
	private static final MathContext NEARLY = new MathContext(30);

	private static BigDecimal number(String text) {
		return new BigDecimal(text);
	}

	private static BigDecimal random(Random random, int digits, int decimals) {
		return BigDecimal.valueOf(1 + random.nextLong((long) Math.pow(10, digits)), decimals);
	}

	@Test
	void decimalCommasAreReadUnlessTheyMayPartThousands() {
		assertEquals(new Reading.Grammage(number("65.5")), Reading.parse("65,5 g/m2"));
		assertEquals(new Reading.Caliper(new Thickness(number("0.254"))), Reading.parse("0,254 mm"));
		assertEquals(number("163.30"), Amount.mass("163,30 g").number());
		assertEquals(0, number("1.2345").compareTo(Amount.mass("1,2345g").number()));
		assertEquals(Reading.parse(".3mm"), Reading.parse(",3mm"));
		for (String open : new String[] { "1,500 g", "12,000g", "1,234.5 g", "1,2,3 g", "1.5,2 g", ",g" }) {
			assertThrows(MeasureException.class, () -> Amount.mass(open), open);
		}
	}

	@Test
	void weightsComeBackFromEveryGrade() {
		Random random = new Random(65);
		for (int i = 0; i < CASES; i++) {
			BigDecimal grammage = random(random, 6, 3);
			for (Grade grade : Grade.values()) {
				BigDecimal back = grade.grammage(grade.pounds(grammage));
				assertEquals(0, grammage.compareTo(back.round(NEARLY)), grammage + " in " + grade);
				BasisWeight weight = new BasisWeight(grammage, grade);
				for (Grade other : Grade.values()) {
					if (other.pounds(weight.grammage()).signum() > 0) {
						assertEquals(0, weight.pounds().compareTo(weight.in(other).in(grade).pounds().round(NEARLY)));
					}
				}
			}
		}
	}

	@Test
	void thicknessAndBulkComeBack() {
		Random random = new Random(66);
		for (int i = 0; i < CASES; i++) {
			Thickness thickness = new Thickness(random(random, 4, 3));
			assertEquals(thickness, Thickness.ofMicrometres(thickness.micrometres()));
			assertEquals(0, thickness.mm().compareTo(Thickness.ofMils(thickness.mils()).mm().round(NEARLY)));
			BigDecimal grammage = random(random, 6, 3);
			Bulk bulk = Bulk.of(thickness, grammage);
			assertEquals(0, thickness.mm().compareTo(bulk.thickness(grammage).mm().round(NEARLY)));
			assertEquals(0, grammage.compareTo(bulk.grammage(thickness).round(NEARLY)));
		}
	}

	@Test
	void packsComeBackFromTheScale() {
		Random random = new Random(67);
		for (int i = 0; i < CASES; i++) {
			Pack pack = new Pack(random(random, 6, 3), random(random, 6, 3), 1 + random.nextInt(500));
			BigDecimal grammage = random(random, 6, 3);
			BigDecimal back = pack.grammage(new Mass(pack.mass(grammage), BigDecimal.ONE));
			assertEquals(0, grammage.compareTo(back.round(NEARLY)), pack + " of " + grammage);
		}
	}

	@Test
	void readings() {
		assertEquals(new Reading.Basis(new BasisWeight(number("65"), Grade.COVER)), Reading.parse("65 lb cover"));
		assertEquals(Reading.parse("65lb Cover"), Reading.parse(" 65.0 lbs. COVER "));
		assertEquals(Reading.parse("65 lb cover"), Reading.parse("65# cover"));
		assertEquals(new Reading.Basis(new BasisWeight(number("60"), Grade.TEXT)), Reading.parse("60 lb offset"));
		assertEquals(new Reading.Pounds(number("65")), Reading.parse("65 lb"));
		for (String text : List.of("216 g/m2", "216g/m²", "216 gsm", "216.00GSM")) {
			assertEquals(new Reading.Grammage(number("216")), Reading.parse(text));
		}
		for (String text : List.of("10 pt", "10 mil", "0.254mm", "254 µm", "254 μm", "254um", "254 micron", "0.010in",
				"10 points")) {
			assertEquals(new Reading.Caliper(new Thickness(number("0.254"))), Reading.parse(text), text);
		}
	}

	@Test
	void whatIsNoReadingIsQuoted() {
		for (String text : List.of("", "cover", "65", "65 lb blotting", "10 cwt", "NaN gsm", "1e3 gsm", "0 gsm", "-80 gsm",
				"10000 g/m2", "2 in", "0 lb", "0 lb cover", "99999 lb cover", "6 5 lb", "1,000 gsm", "9".repeat(400))) {
			MeasureException refused = assertThrows(MeasureException.class, () -> Reading.parse(text), text);
			assertFalse(refused.getMessage().isBlank());
		}
		assertTrue(assertThrows(MeasureException.class, () -> Reading.parse("65 lb blotting")).getMessage()
				.contains("“65 lb blotting” has the unknown unit “blotting”"));
		assertTrue(assertThrows(MeasureException.class, () -> Reading.parse("10000 gsm")).getMessage()
				.contains("10000 g/m² is beyond the 5000 g/m²"));
	}

	@Test
	void massKeepsHowFinelyItWasRead() {
		assertEquals(new Mass(number("163.3"), number("0.1")), Mass.parse("163.3g"));
		assertEquals(new Mass(number("163.30"), number("0.01")), Mass.parse("163.30 g"));
		assertEquals(new Mass(number("1200"), number("100")), Mass.parse("1.2kg"));
		assertEquals(new Mass(number("453.59237"), number("453.59237")), Mass.parse("1 lb"));
		assertEquals(0.05 / 163.3, Mass.parse("163.3g").uncertainty(), 1e-12);
		assertThrows(MeasureException.class, () -> Mass.parse("163"));
		assertThrows(MeasureException.class, () -> Mass.parse("0g"));
		assertThrows(MeasureException.class, () -> Mass.parse("3mm"));
	}

	@Test
	void stackOfManyGivesTheCaliperOfOne() {
		assertEquals(new Thickness(number("0.25")), Pack.thickness(number("12.5"), 50));
		assertThrows(MeasureException.class, () -> Pack.thickness(number("12.5"), 0));
		assertThrows(MeasureException.class, () -> Pack.thickness(BigDecimal.ZERO, 50));
		assertThrows(MeasureException.class, () -> new Pack(BigDecimal.ZERO, BigDecimal.ONE, 1));
	}

	@Test
	void labelWithoutAGradeIsSettledByTheScale() {
		BigDecimal weighed = new Pack(number("304.8"), number("304.8"), 10).grammage(Mass.parse("163.3g"));
		assertEquals(175.78, weighed.doubleValue(), 0.01);
		List<GradeMatch> matches = GradeMatch.ofLabel(number("65"), weighed, 0.0003);
		assertEquals(new BasisWeight(number("65"), Grade.COVER), matches.get(0).weight());
		assertEquals(Sureness.SURE, matches.get(0).sureness());
		assertTrue(matches.stream().skip(1).allMatch(match -> match.sureness() == Sureness.NO), matches.toString());
		assertEquals(Grade.values().length, matches.size());
		assertEquals(Sureness.SURE, GradeMatch.ofLabel(number("100"), number("162"), 0).get(0).sureness(),
				"tag, newsprint and wrapping are counted alike");
	}

	@Test
	void scaleAloneCannotTellGradesThatWeighTheSame() {
		List<GradeMatch> matches = GradeMatch.ofUsual(number("175.6"), 0.001);
		assertEquals(List.of("65 lb cover", "80 lb bristol"),
				matches.stream().limit(2).map(match -> match.weight().toString()).sorted().toList());
		assertEquals(Sureness.UNSURE, matches.get(0).sureness());
		assertEquals(Sureness.NO, GradeMatch.ofUsual(number("900"), 0.001).get(0).sureness());
		assertEquals(Sureness.NO, GradeMatch.ofUsual(number("4999"), 0).get(0).sureness());
	}

	@Test
	void coarseScaleMakesLessSure() {
		BigDecimal weighed = Grade.INDEX.grammage(number("110"));
		double fine = GradeMatch.ofUsual(weighed, 0.001).get(0).share();
		double coarse = GradeMatch.ofUsual(weighed, 0.1).get(0).share();
		assertTrue(coarse < fine, coarse + " < " + fine);
		double sum = GradeMatch.ofUsual(weighed, 0.01).stream().mapToDouble(GradeMatch::share).sum();
		assertEquals(1, sum, 1e-9);
	}
}
