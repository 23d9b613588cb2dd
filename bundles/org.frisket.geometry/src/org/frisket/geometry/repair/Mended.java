package org.frisket.geometry.repair;

import java.util.List;

import org.frisket.geometry.Contour;

/**
 * The artwork after a step, and what the step did to it, in the order of the artwork.
 *
 * @param taken   lines and contours that went because the step is there to take such away: they have moved nowhere
 * @param brought lines that the step added, and closed contours round what it filled
 */
public record Mended(Artwork artwork, List<Mend> mends, List<Contour> taken, List<Contour> brought) {

	public Mended {
		mends = List.copyOf(mends);
		taken = List.copyOf(taken);
		brought = List.copyOf(brought);
	}

	/** Of a step that only moves and sorts. */
	public Mended(Artwork artwork, List<Mend> mends) {
		this(artwork, mends, List.of(), List.of());
	}
}
