package org.frisket.export.machine;

/** Decimal numbers in files for machines: a point, no exponent, the same in every country. */
public final class Digits {

	private static final long[] POWERS = { 1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000,
			1_000_000_000 };
	/** Whole numbers up to here are doubles to the last bit. */
	private static final double LARGEST = 1L << 53;

	private Digits() {
	}

	/**
	 * With so many decimals, the nearest; half way goes up. Zero has no sign.
	 *
	 * @param decimals from 0 to 9
	 * @throws IllegalArgumentException for what is no number or too large to have these decimals
	 */
	public static void append(StringBuilder text, double value, int decimals) {
		double scaled = value * POWERS[decimals];
		if (!(Math.abs(scaled) <= LARGEST)) {
			throw new IllegalArgumentException(value + " with " + decimals + " decimals");
		}
		long whole = Math.round(scaled);
		if (whole < 0) {
			text.append('-');
			whole = -whole;
		}
		text.append(whole / POWERS[decimals]);
		if (decimals > 0) {
			long rest = whole % POWERS[decimals];
			text.append('.');
			for (int digit = decimals - 1; digit > 0 && rest < POWERS[digit]; digit--) {
				text.append('0');
			}
			text.append(rest);
		}
	}

	/** As {@link #append} writes it. */
	public static String of(double value, int decimals) {
		StringBuilder text = new StringBuilder();
		append(text, value, decimals);
		return text.toString();
	}

	/** As {@link #append} writes it, without zeros at the end. */
	public static String shortest(double value, int decimals) {
		String text = of(value, decimals);
		int end = text.length();
		if (decimals > 0) {
			while (text.charAt(end - 1) == '0') {
				end--;
			}
			end -= text.charAt(end - 1) == '.' ? 1 : 0;
		}
		return text.substring(0, end);
	}
}
