package org.frisket.material.shelf;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockExchange;
import org.frisket.material.StockShelf;
import org.frisket.studio.store.StoreException;

/** A change of the shelf: run once it is done, run again it is taken back, and so on. */
public final class StockChange {

	private List<StockExchange> next;
	private boolean done;

	public StockChange(List<StockExchange> exchanges) {
		next = List.copyOf(exchanges);
	}

	/** Takes stocks in; those whose id is there already take the place of what is there, as it was seen. */
	public static StockChange put(Collection<Stock> stocks, Collection<ShelvedStock> seen) {
		Map<String, ShelvedStock> there = byId(seen);
		return new StockChange(stocks.stream().map(stock -> there.containsKey(stock.id())
				? StockExchange.change(there.get(stock.id()), stock)
				: StockExchange.add(stock)).toList());
	}

	/**
	 * All of it or nothing. The first time it must find what was seen, revision and all; later what it left there itself,
	 * though other changes of the same history may have come and gone since.
	 *
	 * @throws ShelfException if somebody else has changed since what it is about; it can be tried again, to no avail
	 */
	public void run(StockShelf shelf) throws StoreException, ShelfException {
		List<StockExchange> now = done ? inPlace(shelf.list()) : next;
		shelf.exchange(now);
		next = now.stream().map(StockExchange::back).toList();
		done = true;
	}

	private List<StockExchange> inPlace(List<ShelvedStock> shelf) {
		Map<String, ShelvedStock> there = byId(shelf);
		return next.stream().map(exchange -> {
			ShelvedStock now = there.get(exchange.id());
			boolean same = now != null && exchange.before().map(ShelvedStock::stock).filter(now.stock()::equals).isPresent();
			return same ? new StockExchange(Optional.of(now), exchange.after(), Math.max(exchange.revision(), now.revision()))
					: exchange;
		}).toList();
	}

	private static Map<String, ShelvedStock> byId(Collection<ShelvedStock> stocks) {
		Map<String, ShelvedStock> there = new HashMap<>();
		stocks.forEach(shelved -> there.put(shelved.stock().id(), shelved));
		return there;
	}
}
