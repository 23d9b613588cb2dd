package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class LengthTest {

	@Test
	void unitsAreMillimetresCentimetresInchesAndPoints() {
		assertEquals(40, Length.parse("40mm"));
		assertEquals(40, Length.parse("4 cm"));
		// 1 in = 25.4 mm exactly; 1 pt = 1/72 in
		assertEquals(38.1, Length.parse("1.5in"), 1e-12);
		assertEquals(25.4, Length.parse("72pt"), 1e-12);
		assertEquals(25.4, Length.parse(" 1\" "), 1e-12);
		assertEquals(-2.5, Length.parse("-2.5MM"));
		assertEquals(0.5, Length.parse(".5mm"));
	}

	@Test
	void textWithoutUnitOrNumberIsRefusedWithAHint() {
		for (String text : List.of("40", "", "mm", "4o mm", "1e3mm", "NaNmm", "Infinitymm", "40 ells", "1,5mm",
				"9999999999mm")) {
			String message = assertThrows(IllegalArgumentException.class, () -> Length.parse(text)).getMessage();
			assertTrue(message.contains("“" + text + "”"), message);
		}
	}

	@Test
	void zeroAndNegativeLengthsAreNotPositive() {
		assertThrows(IllegalArgumentException.class, () -> Length.parsePositive("0mm"));
		assertThrows(IllegalArgumentException.class, () -> Length.parsePositive("-1mm"));
		assertEquals(1, Length.parsePositive("1mm"));
	}

	@Test
	void textHasNoTrailingZerosAndNoSignOnZero() {
		assertEquals("12.5 mm", Length.text(12.5, 2));
		assertEquals("12.35 mm", Length.text(12.3456, 2));
		assertEquals("100 mm", Length.text(100, 2));
		assertEquals("0 mm", Length.text(-0.0001, 2));
	}
}
