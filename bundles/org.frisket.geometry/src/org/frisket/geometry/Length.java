package org.frisket.geometry;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as people write them: a decimal number and a unit, {@code 40mm}, {@code 1.5in}, {@code 12pt}, {@code 4 cm}. */
public final class Length {

	private static final Pattern FORM = Pattern.compile("([+-]?(?:\\d+\\.?\\d*|\\.\\d+))\\s*([a-zA-Z]*|\")");
	/** No sheet is longer, and beyond it a slip of the finger is likelier than a wish. */
	private static final double LONGEST_MM = 100_000;

	private Length() {
	}

	/**
	 * The length in mm.
	 *
	 * @throws IllegalArgumentException if it is no number, has no unit or an unknown one, or is beyond 100 m; the
	 *                                  message quotes the text and says what is expected
	 */
	public static double parse(String text) {
		Matcher matcher = FORM.matcher(text.strip());
		if (!matcher.matches()) {
			throw new IllegalArgumentException("“" + text + "” is not a length; write it like 40mm, 1.5in or 12pt");
		}
		double value = new BigDecimal(matcher.group(1)).doubleValue();
		double mm = value * millimetres(matcher.group(2), text);
		if (!(Math.abs(mm) <= LONGEST_MM)) {
			throw new IllegalArgumentException("“" + text + "” is longer than 100 m");
		}
		return mm;
	}

	/**
	 * As {@link #parse(String)}, but only lengths above zero.
	 *
	 * @throws IllegalArgumentException for zero and negative lengths too
	 */
	public static double parsePositive(String text) {
		double mm = parse(text);
		if (!(mm > 0)) {
			throw new IllegalArgumentException("“" + text + "” is not above zero");
		}
		return mm;
	}

	private static double millimetres(String unit, String text) {
		return switch (unit.toLowerCase(Locale.ROOT)) {
		case "mm" -> 1;
		case "cm" -> 10;
		case "in", "\"" -> 25.4;
		case "pt" -> 25.4 / 72;
		case "" -> throw new IllegalArgumentException("“" + text + "” has no unit; write it like 40mm, 1.5in or 12pt");
		default -> throw new IllegalArgumentException(
				"“" + text + "” has the unknown unit “" + unit + "”; mm, cm, in and pt are known");
		};
	}

	/** In mm with at most the given number of decimals and no trailing zeros, such as {@code 12.5 mm}. */
	public static String text(double mm, int decimals) {
		BigDecimal rounded = new BigDecimal(mm).setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
		return (rounded.signum() == 0 ? "0" : rounded.toPlainString()) + " mm";
	}
}
