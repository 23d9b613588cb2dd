package org.frisket.sheets.imposing;

import java.util.List;

import org.frisket.material.Grain;
import org.frisket.material.sizes.Format;
import org.frisket.sheets.leftovers.Leftover;

/**
 * What there is of a stock to lay parts on.
 *
 * @param sizes     it comes in, the usual one first
 * @param grain     which way its fibres lie
 * @param leftovers of it, in the order in which they are to be used
 */
public record StockSupply(List<Format> sizes, Grain grain, List<Leftover> leftovers) {

	/** Of a stock that nothing is known of. */
	public static final StockSupply UNKNOWN = new StockSupply(List.of(), Grain.UNKNOWN, List.of());

	public StockSupply {
		sizes = List.copyOf(sizes);
		leftovers = List.copyOf(leftovers);
	}

	/** Whether parts may only be turned by half, so that the fibres lie the same way in all. */
	boolean isGrained() {
		return grain == Grain.LONG || grain == Grain.SHORT;
	}
}
