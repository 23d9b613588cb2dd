package org.frisket.material;

import java.util.Optional;

import org.eclipse.osgi.util.NLS;

/**
 * One stock in the place of another of the same id, or of none.
 *
 * @param before   what lies there, as it was seen; empty if nothing does
 * @param after    what is to lie there; empty to take it away
 * @param revision the highest that the stock ever had, so that whoever saw it before it was taken away and put back is
 *                 still told that it is not the same; 0 for a new one
 */
public record StockExchange(Optional<ShelvedStock> before, Optional<Stock> after, long revision) {

	/** @throws IllegalArgumentException if both are empty or they have different ids */
	public StockExchange {
		if (before.isEmpty() && after.isEmpty()
				|| before.isPresent() && after.isPresent() && !before.get().stock().id().equals(after.get().id())) {
			throw new IllegalArgumentException("no exchange of one stock: " + before + ", " + after);
		}
	}

	public static StockExchange add(Stock stock) {
		return new StockExchange(Optional.empty(), Optional.of(stock), 0);
	}

	public static StockExchange change(ShelvedStock before, Stock after) {
		return new StockExchange(Optional.of(before), Optional.of(after), before.revision());
	}

	public static StockExchange remove(ShelvedStock before) {
		return new StockExchange(Optional.of(before), Optional.empty(), before.revision());
	}

	/** Of the stock that it is about. */
	public String id() {
		return before.map(shelved -> shelved.stock().id()).orElseGet(() -> after.orElseThrow().id());
	}

	/** What lies there once it is done. */
	Optional<ShelvedStock> result() {
		return after.map(stock -> new ShelvedStock(stock, before.map(ShelvedStock::revision).orElse(revision) + 1));
	}

	/** @param there the revision of what lies there; null if nothing does */
	void refuseOther(Long there) throws ShelfException {
		if (before.isEmpty() && there != null) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_idTaken, id()));
		}
		if (before.isPresent() && there == null) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_gone, before.get().stock().name()));
		}
		if (before.isPresent() && before.get().revision() != there) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_changed, before.get().stock().name()));
		}
	}

	/** What takes it back once it is done. */
	public StockExchange back() {
		Optional<ShelvedStock> now = result();
		long highest = Math.max(revision, Math.max(before.map(ShelvedStock::revision).orElse(0L),
				now.map(ShelvedStock::revision).orElse(0L)));
		return new StockExchange(now, before.map(ShelvedStock::stock), highest);
	}
}
