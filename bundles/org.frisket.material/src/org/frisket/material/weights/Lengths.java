package org.frisket.material.weights;

import java.math.BigDecimal;

/** Lengths that are exact in mm, where {@link org.frisket.geometry.Length} has a double. */
public final class Lengths {

	private Lengths() {
	}

	/**
	 * In mm.
	 *
	 * @param text a number and mm, cm, m, in, ft or µm
	 * @throws MeasureException if it is none above zero; the message quotes it
	 */
	public static BigDecimal parse(String text) {
		return Measures.plain(Amount.length(text).number());
	}
}
