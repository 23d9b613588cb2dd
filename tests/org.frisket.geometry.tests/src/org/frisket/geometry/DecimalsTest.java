package org.frisket.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** Held against the library's own reading of numbers, and a regular expression for where they end. */
class DecimalsTest {

	private static final Pattern FORM = Pattern.compile("[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?");

	private static void assertSame(String number) {
		String text = "x" + number + "y";
		assertEquals(Double.doubleToLongBits(Double.parseDouble(number)),
				Double.doubleToLongBits(Decimals.parse(text, 1, 1 + number.length())), number);
		assertEquals(1 + number.length(), Decimals.end(text, 1), number);
	}

	@Test
	void everyBitIsThatOfTheLibrary() {
		for (String number : new String[] { "0", "-0", "+0.0", ".5", "5.", "-.25", "9007199254740993", "900719925474099.1",
				"9007199254740992", "0.30000000000000004", "123456789012345678901234567890", "1e5", "-1.5E-7", "4.9e-324",
				"1e400", "0.0000000000000000000000001", "0000000000000000000000001.5", "2.2250738585072012e-308" }) {
			assertSame(number);
		}
		Random random = new Random(41);
		for (int i = 0; i < 200_000; i++) {
			double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(20));
			assertSame(i % 2 == 0 ? Double.toString(value)
					: String.format(Locale.ROOT, "%." + random.nextInt(17) + "f", value));
		}
	}

	@Test
	void numbersEndWhereTheirFormEnds() {
		Random random = new Random(42);
		String characters = "0123456789..--++eE, x";
		for (int i = 0; i < 200_000; i++) {
			StringBuilder text = new StringBuilder();
			for (int k = random.nextInt(9); k >= 0; k--) {
				text.append(characters.charAt(random.nextInt(characters.length())));
			}
			Matcher matcher = FORM.matcher(text);
			assertEquals(matcher.lookingAt() ? matcher.end() : 0, Decimals.end(text.toString(), 0), text::toString);
		}
		assertEquals(0, Decimals.end("", 0));
	}

	@Test
	void whatIsNoNumberIsRefused() {
		for (String text : new String[] { "", "-", ".", "1.2.3", "1-2", "e5", "--1" }) {
			assertThrows(NumberFormatException.class, () -> Decimals.parse(text, 0, text.length()), text);
		}
	}
}
