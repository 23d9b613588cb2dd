package org.frisket.prepare.internal.wording;

import java.util.List;

import org.frisket.geometry.Region;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.stencil.HeldIsland;
import org.frisket.prepare.internal.Shape;
import org.frisket.typography.join.Bridges;

/**
 * Letters with all that holds them.
 *
 * @param clean   the letters alone
 * @param region  of which nothing is left to do
 * @param bridges what became of those between letters, in the wording's order
 * @param islands insides of letters, if it is a stencil, and what holds them
 * @param owners  the letter and number of each island
 * @param remarks on what cannot be
 */
public record HeldLetters(CleanResult clean, Region region, List<Bridges.Outcome> bridges, List<HeldIsland> islands,
		List<IslandOwner> owners, List<Shape.Remark> remarks) {

	public HeldLetters {
		bridges = List.copyOf(bridges);
		islands = List.copyOf(islands);
		owners = List.copyOf(owners);
		remarks = List.copyOf(remarks);
	}
}
