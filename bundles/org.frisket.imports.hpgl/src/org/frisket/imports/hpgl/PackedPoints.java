package org.frisket.imports.hpgl;

/**
 * The numbers of {@code PE}: digits of base 64 or 32, the least first, whose last digit is marked by a higher code; the
 * lowest bit of a number is its sign. Layout from memory of the HP-GL/2 reference.
 */
final class PackedPoints {

	private static final int FIRST_DIGIT = 63;

	private final String text;
	private int at;
	private boolean narrow;
	private int fraction;

	PackedPoints(String text) {
		this.text = text;
	}

	/** The next flag, {@code 0} before a number, or -1 at the end. */
	int flag() {
		while (at < text.length() && text.charAt(at) <= ' ') {
			at++;
		}
		if (at >= text.length()) {
			return -1;
		}
		char c = text.charAt(at);
		switch (c) {
		case '7' -> narrow = true;
		case ':', '<', '>', '=' -> {
			// told to the caller
		}
		default -> {
			return 0;
		}
		}
		at++;
		return c;
	}

	/** How many binary places all numbers from here on have. */
	void setFraction(int places) {
		fraction = Math.max(0, Math.min(30, places));
	}

	/** A number as it is, without binary places; NaN if the text ends or is not one. */
	double whole() {
		long value = 0;
		long weight = 1;
		int base = narrow ? 32 : 64;
		int last = narrow ? 95 : 191;
		while (at < text.length()) {
			int c = text.charAt(at++);
			if (narrow) {
				c &= 127;
			}
			if (c <= ' ') {
				continue;
			}
			boolean ends = c >= last;
			int digit = c - (ends ? last : FIRST_DIGIT);
			if (digit < 0 || digit >= base || weight > 1L << 48) {
				return Double.NaN;
			}
			value += digit * weight;
			weight *= base;
			if (ends) {
				return (value & 1) == 0 ? value >> 1 : -(value >> 1);
			}
		}
		return Double.NaN;
	}

	double number() {
		return whole() / (1L << fraction);
	}
}
