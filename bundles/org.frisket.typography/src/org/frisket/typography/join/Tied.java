package org.frisket.typography.join;

import java.util.Comparator;
import java.util.List;

import org.frisket.geometry.Piece;
import org.frisket.geometry.Region;

/**
 * Lettering with bars.
 *
 * @param region with the bars in it
 * @param bars   that were set, in the order in which they were
 */
public record Tied(Region region, List<Bar> bars) {

	public Tied {
		bars = List.copyOf(bars);
	}

	/** All pieces but the largest, in the region's order; empty if it is one piece. */
	public List<Piece> loose() {
		Piece largest = region.pieces().stream().max(Comparator.comparingDouble(Piece::area)).orElse(null);
		return region.pieces().stream().filter(p -> p != largest).toList();
	}
}
