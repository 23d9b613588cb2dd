package org.frisket.typography.face;

import java.util.List;

/**
 * One way in which a variable font can be varied.
 *
 * @param tag    four letters, such as {@code wght}
 * @param name   for people; may be empty
 * @param least  smallest value in the axis's own units
 * @param normal value of the plain face
 * @param most   largest value
 * @param hidden whether the font's maker would not have it shown
 * @param stops  values that have a name
 */
public record Axis(String tag, String name, double least, double normal, double most, boolean hidden,
		List<Stop> stops) {

	/** A value with a name, such as Semibold at 600. */
	public record Stop(String name, double value) {
	}

	public Axis {
		stops = List.copyOf(stops);
	}

	/** The nearest value within the range. */
	public double clamped(double value) {
		return Math.min(most, Math.max(least, value));
	}
}
