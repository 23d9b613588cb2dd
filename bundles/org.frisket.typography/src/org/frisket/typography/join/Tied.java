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
 * @param loose  pieces of the region that were to be tied and are not, in its order
 */
public record Tied(Region region, List<Bar> bars, List<Piece> loose) {

	public Tied {
		bars = List.copyOf(bars);
		loose = List.copyOf(loose);
	}

	/** All pieces but the largest. */
	static List<Piece> allButLargest(List<Piece> pieces) {
		Piece largest = pieces.stream().max(Comparator.comparingDouble(Piece::area)).orElse(null);
		return pieces.stream().filter(p -> p != largest).toList();
	}
}
