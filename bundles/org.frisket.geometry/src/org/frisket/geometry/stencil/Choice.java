package org.frisket.geometry.stencil;

import java.util.List;

import org.frisket.geometry.Point;

/**
 * Bridges of one island as somebody wants them.
 *
 * @param place  in or near the island
 * @param angles of the bridges as seen from the middle of the island, in radians from the x axis towards the y axis,
 *               which points down
 */
public record Choice(Point place, List<Double> angles) {

	public Choice {
		angles = List.copyOf(angles);
	}
}
