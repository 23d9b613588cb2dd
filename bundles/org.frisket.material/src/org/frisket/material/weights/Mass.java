package org.frisket.material.weights;

import java.math.BigDecimal;

/**
 * What a scale showed.
 *
 * @param grams above zero
 * @param step  in g, what the last digit that was read off is worth
 */
public record Mass(BigDecimal grams, BigDecimal step) {

	/** @throws MeasureException unless both are above zero */
	public Mass {
		grams = Measures.plain(Measures.above0(grams, Messages.Measures_mass, "g"));
		step = Measures.plain(Measures.above0(step, Messages.Measures_mass, "g"));
	}

	/**
	 * @param text a number and g, kg, oz or lb
	 * @throws MeasureException if it is none above zero; the message quotes it
	 */
	public static Mass parse(String text) {
		Amount shown = Amount.parse(text, "163.3g, 5.76oz");
		Amount grams = Amount.mass(text);
		BigDecimal unit = grams.number().divide(shown.number(), Grade.EXACT);
		return new Mass(grams.number(), unit.scaleByPowerOfTen(-shown.number().scale()));
	}

	/** How far the scale may be off, as a part of what it showed. */
	public double uncertainty() {
		return step.doubleValue() / 2 / grams.doubleValue();
	}
}
