package org.frisket.geometry;

/** Decimal numbers that stand in a longer text, read without a copy of each: drawings are mostly numbers. */
public final class Decimals {

	/** Powers of ten that a double holds to the last bit. */
	private static final double[] POWERS = { 1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13,
			1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22 };
	/** Whole numbers up to here are doubles to the last bit. */
	private static final long LARGEST_WHOLE = 1L << 53;

	private Decimals() {
	}

	/**
	 * Where the number that begins at a place ends: a sign if any, digits with at most one point, an exponent if any.
	 *
	 * @return the place itself if no number begins there
	 */
	public static int end(String text, int from) {
		int at = from < text.length() && isSign(text.charAt(from)) ? from + 1 : from;
		int digits = digits(text, at);
		int end = digits;
		if (digits < text.length() && text.charAt(digits) == '.') {
			end = digits(text, digits + 1);
			if (digits == at && end == digits + 1) {
				return from;
			}
		} else if (digits == at) {
			return from;
		}
		return exponent(text, end);
	}

	/** An exponent without digits is none. */
	private static int exponent(String text, int from) {
		if (from >= text.length() || (text.charAt(from) | 0x20) != 'e') {
			return from;
		}
		int at = from + 1 < text.length() && isSign(text.charAt(from + 1)) ? from + 2 : from + 1;
		int end = digits(text, at);
		return end == at ? from : end;
	}

	private static boolean isSign(char c) {
		return c == '+' || c == '-';
	}

	private static int digits(String text, int from) {
		int at = from;
		while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
			at++;
		}
		return at;
	}

	/**
	 * The double next to the number between two places, as {@link Double#parseDouble} finds it.
	 *
	 * @throws NumberFormatException if no number stands there
	 */
	public static double parse(String text, int from, int to) {
		boolean negative = from < to && text.charAt(from) == '-';
		long digits = 0;
		int decimals = -1;
		int at = from < to && isSign(text.charAt(from)) ? from + 1 : from;
		boolean any = false;
		for (; at < to; at++) {
			char c = text.charAt(at);
			if (c == '.' && decimals < 0) {
				decimals = 0;
			} else if (c >= '0' && c <= '9' && digits <= LARGEST_WHOLE / 10 - 1) {
				any = true;
				digits = digits * 10 + c - '0';
				decimals += decimals < 0 ? 0 : 1;
			} else {
				break;
			}
		}
		if (at < to || !any || decimals >= POWERS.length) {
			return Double.parseDouble(text.substring(from, to));
		}
		// both are exact, so that dividing rounds once and to the nearest
		double value = digits / POWERS[Math.max(0, decimals)];
		return negative ? -value : value;
	}
}
