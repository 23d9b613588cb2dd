package org.frisket.material;

import org.frisket.material.weights.Thickness;

/** How thick a sheet is, and how that is known. */
public record Caliper(Thickness thickness, Source source) {

	/** Where a caliper comes from. */
	public enum Source {
		/** By a gauge, or as the maker states it. */
		MEASURED,
		/** From the grammage and a usual bulk. */
		ESTIMATED
	}
}
