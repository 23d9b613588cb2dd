package org.frisket.material.tools;

import java.util.OptionalDouble;

/**
 * A setting in a machine's own steps, and what they mean. Between the least and the greatest step the meaning runs in a
 * straight line, as long as no measurement of the studio says otherwise.
 *
 * @param unit  what the machine calls a step; shown only
 * @param least the lowest setting
 * @param most  the highest
 * @param step  between two settings; above 0
 * @param means what the lowest and the highest setting mean, in grams-force or mm/s; null if nobody knows
 */
public record NativeScale(String unit, double least, double most, double step, Meaning means) {

	/** In grams-force or mm/s. */
	public record Meaning(double least, double most) {

		public Meaning {
			if (!(least < most)) {
				throw new IllegalArgumentException("a setting that means from " + least + " to " + most);
			}
		}
	}

	/** Settings are compared to a millionth of a step. */
	private static final double SLACK = 1e-6;

	public NativeScale {
		if (!(least < most) || !(step > 0) || !(step <= most - least)) {
			throw new IllegalArgumentException("a setting from " + least + " to " + most + " in steps of " + step);
		}
	}

	/** A scale whose steps are known quantities themselves, such as mm/s. */
	public static NativeScale physical(String unit, double least, double most, double step) {
		return new NativeScale(unit, least, most, step, new Meaning(least, most));
	}

	/** The nearest setting the machine has. */
	public double nearest(double value) {
		return at(Math.rint((value - least) / step));
	}

	/** The lowest setting that is not below the value; the highest there is if none is. */
	public double atLeast(double value) {
		return at(Math.ceil((value - least) / step - SLACK));
	}

	/** The highest setting that is not above the value; the lowest there is if none is. */
	public double atMost(double value) {
		return at(Math.floor((value - least) / step + SLACK));
	}

	private double at(double steps) {
		double last = Math.floor((most - least) / step + SLACK);
		double value = least + Math.max(0, Math.min(last, steps)) * step;
		// sums of steps such as 0.1 are brought back to the number that was meant
		return Math.rint(value * 1e9) / 1e9;
	}

	/** Whether the machine can be set to this. */
	public boolean has(double value) {
		return value >= least - SLACK * step && value <= most + SLACK * step
				&& Math.abs(nearest(value) - value) <= SLACK * step;
	}

	/** From 0 for the lowest setting to 1 for the highest. */
	public double neutral(double value) {
		return (value - least) / (most - least);
	}

	/** The setting nearest to a share from 0 to 1 of the range. */
	public double ofNeutral(double share) {
		return nearest(least + share * (most - least));
	}

	/** What a setting means in grams-force or mm/s; empty if nobody knows. */
	public OptionalDouble meaning(double value) {
		return means == null ? OptionalDouble.empty()
				: OptionalDouble.of(means.least + neutral(value) * (means.most - means.least));
	}

	/** The setting nearest to a meaning; empty if nobody knows what settings mean. */
	public OptionalDouble ofMeaning(double meaning) {
		return means == null ? OptionalDouble.empty()
				: OptionalDouble.of(ofNeutral((meaning - means.least) / (means.most - means.least)));
	}
}
