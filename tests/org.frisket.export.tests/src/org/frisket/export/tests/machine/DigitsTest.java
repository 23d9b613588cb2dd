package org.frisket.export.tests.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Random;

import org.frisket.export.machine.Ascii;
import org.frisket.export.machine.Digits;
import org.junit.jupiter.api.Test;

class DigitsTest {

	/** Java's own decimals are the peer. */
	@Test
	void numbersAreTheNearestWithTheirDecimals() {
		Random random = new Random(3);
		for (int i = 0; i < 20_000; i++) {
			int decimals = random.nextInt(10);
			double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9) - 3);
			BigDecimal found = new BigDecimal(Digits.of(value, decimals));
			assertEquals(decimals, found.scale());
			double off = Math.abs(found.subtract(new BigDecimal(value)).doubleValue());
			assertTrue(off <= 0.5 * Math.pow(10, -decimals) + 2 * Math.ulp(value), value + " as " + found);
			assertEquals(0, new BigDecimal(Digits.shortest(value, decimals)).compareTo(found), value + " as " + found);
		}
	}

	@Test
	void zeroHasNoSignAndNoTail() {
		assertEquals("0.000", Digits.of(-0.0001, 3));
		assertEquals("-0.001", Digits.of(-0.00051, 3));
		assertEquals("0", Digits.shortest(-0.0, 3));
		assertEquals("100", Digits.shortest(100, 3));
		assertEquals("100", Digits.shortest(100, 0));
		assertEquals("2.5", Digits.shortest(2.5, 3));
		assertEquals("7.0050", Digits.of(7.005, 4));
	}

	@Test
	void whatIsNoNumberIsRefused() {
		for (double value : new double[] { Double.NaN, Double.POSITIVE_INFINITY, 1e18 }) {
			assertThrows(IllegalArgumentException.class, () -> Digits.of(value, 3));
		}
	}

	@Test
	void textsBecomePlainLetters() {
		assertEquals("Fullfeder, gross 'x' 45?", Ascii.of("Füllfeder, groß „x“ 45°"));
		assertEquals("a b?-", Ascii.of("a\nb☂–"));
	}
}
