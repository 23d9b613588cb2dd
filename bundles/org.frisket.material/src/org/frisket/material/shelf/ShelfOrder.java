package org.frisket.material.shelf;

import java.math.BigDecimal;
import java.util.Comparator;

import org.frisket.material.Stock;
import org.frisket.studio.NameKey;

/** By what the stocks on a shelf are sorted; those that are equal in it, by name. */
public enum ShelfOrder {
	NAME(Comparator.comparing(stock -> 0)), //
	FAMILY(Comparator.comparing(Stock::family)), //
	/** The lightest first; those of unknown grammage, such as films, last. */
	GRAMMAGE(Comparator.comparing(stock -> stock.grammage().orElse(Beyond.ALL))), //
	/** What it is time to order first, then by the number on hand. */
	ON_HAND(Comparator.comparing((Stock stock) -> !stock.isLow()).thenComparing(Stock::onHand));

	private static final class Beyond {
		static final BigDecimal ALL = new BigDecimal(Long.MAX_VALUE);
	}

	private final Comparator<Stock> order;

	ShelfOrder(Comparator<Stock> first) {
		order = first.thenComparing(stock -> NameKey.of(stock.name()));
	}

	public Comparator<Stock> order() {
		return order;
	}
}
