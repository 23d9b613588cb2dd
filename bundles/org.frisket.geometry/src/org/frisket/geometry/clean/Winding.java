package org.frisket.geometry.clean;

import java.util.function.IntPredicate;

/**
 * How often the contours of two operands wind round a place, both numbers packed into one int so that they add up
 * together. Each may run from -32768 to 32767.
 */
final class Winding {

	/** Once round in the first operand. */
	static final int FIRST = 1;
	/** Once round in the second operand. */
	static final int SECOND = 1 << 16;

	static final IntPredicate NON_ZERO = w -> first(w) != 0;
	static final IntPredicate EVEN_ODD = w -> (first(w) & 1) != 0;

	private Winding() {
	}

	static int first(int winding) {
		return (short) winding;
	}

	static int second(int winding) {
		return (winding - (short) winding) >> 16;
	}
}
