package org.frisket.typography.layout;

import java.util.List;

import org.frisket.typography.SetText;

/**
 * Text on a curve.
 *
 * @param text        with its letters at their places; the lines still tell of the straight text
 * @param overflowing numbers of the letters for which the curve was too short: they stand on its straight
 *                    continuation or, on a closed one, upon others
 * @param needed      length of the longest line in mm
 * @param available   length of the curve in mm from where that line starts, round once if it is closed
 */
public record Laid(SetText text, List<Integer> overflowing, double needed, double available) {

	public Laid {
		overflowing = List.copyOf(overflowing);
	}
}
