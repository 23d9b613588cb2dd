package org.frisket.sheets.imposing;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.sheets.leftovers.Leftover;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/** What a studio has to lay parts on. */
@FunctionalInterface
public interface Supply {

	/** A studio of which nothing is known: sheets are A4, nothing is left over. */
	Supply NONE = (stock, colour) -> StockSupply.UNKNOWN;

	/** Of a stock, by its id, in a colour; both may be null. */
	StockSupply of(String stock, String colour);

	/**
	 * The sizes on the studio's shelf, and its leftovers, as they are now.
	 *
	 * @throws IOException with a message for people, if the store cannot be read
	 */
	static Supply ofStudio(StudioFolder studio) throws IOException {
		if (Store.revision(studio).isEmpty()) {
			return NONE;
		}
		try (Store store = Store.openForReading(studio, StockShelf.AREA, Leftovers.AREA)) {
			Map<String, Stock> stocks = new HashMap<>();
			for (ShelvedStock shelved : new StockShelf(store).list()) {
				stocks.put(shelved.stock().id(), shelved.stock());
			}
			return of(stocks, new Leftovers(store).atHand());
		}
	}

	/** Of these stocks, by their ids, and leftovers. */
	static Supply of(Map<String, Stock> stocks, List<Leftover> leftovers) {
		return (id, colour) -> {
			List<Leftover> own = new ArrayList<>();
			for (Leftover leftover : leftovers) {
				if (Objects.equals(leftover.stock(), id) && Objects.equals(leftover.colour(), colour)) {
					own.add(leftover);
				}
			}
			Stock stock = id == null ? null : stocks.get(id);
			return stock == null ? new StockSupply(List.of(), StockSupply.UNKNOWN.grain(), own)
					: new StockSupply(stock.sizes(), stock.grain(), own);
		};
	}
}
