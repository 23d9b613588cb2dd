package org.frisket.geometry.repair;

import java.util.List;

/** The artwork after a step, and what the step did to it, in the order of the artwork. */
public record Mended(Artwork artwork, List<Mend> mends) {

	public Mended {
		mends = List.copyOf(mends);
	}
}
