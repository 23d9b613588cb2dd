package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.frisket.ui.LengthUnit;
import org.frisket.ui.views.internal.properties.fields.LengthField;
import org.junit.jupiter.api.Test;

/** What may be typed into a field for a length. */
class LengthFieldTest {

	private static double parse(String text) {
		return LengthField.ANY.parse(text, 10);
	}

	@Test
	void numberAloneIsInMillimetres() {
		assertEquals(40, parse("40"));
		assertEquals(12.5, parse(" 12.5 "));
	}

	@Test
	void unitsAreThoseOfALength() {
		assertEquals(40, parse("40mm"));
		assertEquals(40, parse("4 cm"));
		// 1 in = 25.4 mm exactly; 1 pt = 1/72 in
		assertEquals(38.1, parse("1.5in"), 1e-12);
		assertEquals(25.4, parse("72pt"), 1e-12);
		assertEquals(25.4, parse("1\""), 1e-12);
		assertEquals(25.4, parse("1\u2033"), 1e-12);
	}

	@Test
	void commaServesAsAPoint() {
		assertEquals(12.5, parse("12,5 mm"));
		assertEquals(0.5, parse(",5"));
	}

	@Test
	void sumsAreWorkedOut() {
		assertEquals(42, parse("40mm + 2"));
		assertEquals(35, parse("40 - 5"));
		assertEquals(35, parse("40\u22125"));
		assertEquals(27.4, parse("1in+2mm"), 1e-12);
		assertEquals(41, parse("40 + 2 - 1mm"));
		assertEquals(40, parse("120mm/3"));
		assertEquals(30, parse("10mm * 3"));
		assertEquals(30, parse("10mm \u00d7 3"));
		assertEquals(22, parse("10 * 2 + 4 / 2"));
	}

	@Test
	void signInFrontActsOnTheValueInTheField() {
		assertEquals(12, parse("+2mm"));
		assertEquals(8, parse("+-2mm"));
		assertEquals(13, parse("+2mm + 1"));
		assertEquals(5, parse("/2"));
		assertEquals(20, parse("*2"));
	}

	@Test
	void minusInFrontIsTheSignOfTheValue() {
		assertEquals(-2, parse("-2mm"));
		assertEquals(-2, parse("\u22122"));
		assertThrows(IllegalArgumentException.class, () -> LengthField.SIZE.parse("-2mm", 10));
	}

	@Test
	void whatIsNoLengthIsRefusedWithTheReason() {
		for (String text : List.of("", "abc", "mm", "4o", "40 +", "40 mm mm", "40 * ", "40 * 2mm", "1e3", "40 ells",
				"NaN", "--2", "++2", "(2)", "2//1")) {
			String message = assertThrows(IllegalArgumentException.class, () -> parse(text), text).getMessage();
			assertTrue(message.length() > 10, message);
		}
		assertTrue(assertThrows(IllegalArgumentException.class, () -> parse("40 ells")).getMessage().contains("ells"));
	}

	@Test
	void absurdSizesAreRefused() {
		for (String text : List.of("10001", "9999999999999mm", "400in", "0.001", "0", "1/0", "10*9999")) {
			assertThrows(IllegalArgumentException.class, () -> LengthField.SIZE.parse(text, 10), text);
		}
		assertEquals(10_000, LengthField.SIZE.parse("10000", 1));
		assertEquals(0, LengthField.AMOUNT.parse("0", 1));
		assertThrows(IllegalArgumentException.class, () -> LengthField.AMOUNT.parse("-0.1", 1));
	}

	@Test
	void shownTextReadsBackInEveryLanguage() {
		Locale before = Locale.getDefault();
		try {
			Random random = new Random(11);
			for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN, Locale.FRENCH)) {
				Locale.setDefault(locale);
				for (int i = 0; i < 500; i++) {
					double mm = (random.nextDouble() - 0.5) * 2 * 9_999;
					assertEquals(mm, parse(LengthField.text(mm)), 0.00051, LengthField.text(mm));
				}
			}
		} finally {
			Locale.setDefault(before);
		}
	}

	@Test
	void inchesOfTheStudioAreShownAndMeant() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.ENGLISH);
			LengthUnit.show(LengthUnit.INCH);
			assertEquals("1.5 in", LengthField.text(38.1));
			assertEquals(38.1, parse("1.5"), 1e-12);
			assertEquals(40, parse("40mm"));
			assertEquals(35.4, parse("+1"), 1e-12);
		} finally {
			LengthUnit.show(LengthUnit.MILLIMETRE);
			Locale.setDefault(before);
		}
	}

	@Test
	void shownTextIsShort() {
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.ENGLISH);
			assertEquals("40 mm", LengthField.text(40));
			assertEquals("0 mm", LengthField.text(-0.0001));
			assertEquals("1234.568 mm", LengthField.text(1234.5678));
		} finally {
			Locale.setDefault(before);
		}
	}
}
