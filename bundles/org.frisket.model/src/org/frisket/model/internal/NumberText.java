package org.frisket.model.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Pattern;

/**
 * Text of numbers in the job file. {@link Double#toString} would not do: it writes more digits than needed before
 * Java 19, so that the bytes of a file would depend on the Java that wrote it.
 */
public final class NumberText {

	private static final Pattern NUMBER = Pattern
			.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,4})?");
	private static final int LONGEST = 400;

	private NumberText() {
	}

	/**
	 * Fewest significant digits that are read back as the same number; no sign on zero.
	 *
	 * @throws IllegalArgumentException if the value is infinite or not a number
	 */
	public static String write(double value) {
		if (!Double.isFinite(value)) {
			throw new IllegalArgumentException(value + " cannot be written");
		}
		if (value == Math.rint(value) && Math.abs(value) < 1e15) {
			return Long.toString((long) value);
		}
		BigDecimal exact = new BigDecimal(value);
		BigDecimal shortest = exact;
		for (int digits = 1; digits <= 17; digits++) {
			shortest = exact.round(new MathContext(digits));
			if (shortest.doubleValue() == value) {
				break;
			}
		}
		double size = Math.abs(value);
		shortest = shortest.stripTrailingZeros();
		return size >= 1e-6 && size < 1e21 ? shortest.toPlainString() : shortest.toString();
	}

	/** @throws NumberFormatException if the text is not a finite decimal number */
	public static double parse(String text) {
		if (text == null || text.length() > LONGEST || !NUMBER.matcher(text).matches()) {
			throw new NumberFormatException("not a number: '" + text + "'");
		}
		double value = Double.parseDouble(text);
		if (Double.isInfinite(value)) {
			throw new NumberFormatException("too large: '" + text + "'");
		}
		return value;
	}
}
