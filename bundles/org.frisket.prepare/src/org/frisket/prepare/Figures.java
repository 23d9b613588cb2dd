package org.frisket.prepare;

import org.frisket.geometry.Length;

/** Figures in sentences for people, with the decimal sign of the language that the sentences are in. */
public final class Figures {

	private Figures() {
	}

	/** A length with its unit, such as {@code 12.5 mm}, with at most so many decimals and no trailing zeros. */
	public static String length(double mm, int decimals) {
		return length(mm, decimals, Messages.Figures_point);
	}

	/** The same in any language. @param point its decimal sign */
	public static String length(double mm, int decimals, String point) {
		return Length.text(mm, decimals).replace(".", point);
	}

	/** A number with at most so many decimals and no trailing zeros. */
	public static String number(double value, int decimals) {
		String withUnit = length(value, decimals);
		return withUnit.substring(0, withUnit.indexOf(' '));
	}
}
