package org.frisket.geometry.stencil;

import java.util.List;
import java.util.OptionalInt;

import org.frisket.geometry.Point;

/**
 * Bridges of one island as somebody wants them. It is about the island that the place lies in, or else about the one
 * whose middle is nearest.
 *
 * @param place  in or near the island
 * @param count  how many bridges there are to be, placed by the rule; 0 leaves the island to fall out
 * @param angles of the bridges as seen from the middle of the island, in radians from the x axis towards the y axis,
 *               which points down; if there are any, they decide
 */
public record Choice(Point place, OptionalInt count, List<Double> angles) {

	/** More do not fit round any island. */
	public static final int MOST = 12;

	/** @throws IllegalArgumentException if the count is negative or above {@value #MOST} */
	public Choice {
		if (count.isPresent() && (count.getAsInt() < 0 || count.getAsInt() > MOST)) {
			throw new IllegalArgumentException(count.getAsInt() + " bridges for an island");
		}
		angles = List.copyOf(angles);
	}

	/** Bridges at these angles; without any, by the rule. */
	public Choice(Point place, List<Double> angles) {
		this(place, OptionalInt.empty(), angles);
	}

	/** So many bridges. */
	public static Choice of(Point place, int count) {
		return new Choice(place, OptionalInt.of(count), List.of());
	}

	boolean isNone() {
		return angles.isEmpty() && count.isPresent() && count.getAsInt() == 0;
	}
}
