package org.frisket.geometry.stencil;

import java.util.List;

import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;

/**
 * An island of an opening, and what holds it.
 *
 * @param edge    of the island, as a hole of the opening
 * @param middle  that bridges are seen from
 * @param bridges those that start at it
 * @param loose   whether it falls out all the same
 */
public record HeldIsland(Contour edge, Point middle, List<Bridge> bridges, boolean loose) {

	public HeldIsland {
		bridges = List.copyOf(bridges);
	}
}
