package org.frisket.material;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.osgi.util.NLS;
import org.frisket.studio.NameKey;
import org.frisket.studio.store.Area;
import org.frisket.studio.store.Store;
import org.frisket.studio.store.StoreException;

/** The studio's own stock, in its store. Every method is a transaction of its own. */
public final class StockShelf {

	/** To be named when the store is opened. */
	public static final Area AREA = new Area("material", StockShelf.class, "migrations");

	private final Store store;

	/** @param store opened with {@link #AREA}; it stays open, and is closed by whoever opened it */
	public StockShelf(Store store) {
		this.store = store;
	}

	/** All stock, by name. */
	public List<ShelvedStock> list() throws StoreException {
		return store.read(StockRows::list);
	}

	public Optional<ShelvedStock> find(String id) throws StoreException {
		return store.read(connection -> StockRows.find(connection, id));
	}

	/** By its name, whatever the case. */
	public Optional<ShelvedStock> named(String name) throws StoreException {
		return store.read(connection -> {
			Optional<String> id = StockRows.idOfName(connection, name);
			return id.isPresent() ? StockRows.find(connection, id.get()) : Optional.empty();
		});
	}

	/** The ids of all stock. */
	public Set<String> ids() throws StoreException {
		return store.read(StockRows::ids);
	}

	/** @throws ShelfException if its id or its name is taken */
	public ShelvedStock add(Stock stock) throws StoreException, ShelfException {
		return store.change(connection -> {
			refuseTaken(connection, stock);
			StockRows.insert(connection, List.of(stock));
			return new ShelvedStock(stock, StockRows.FIRST_REVISION);
		});
	}

	/**
	 * Takes in many at once, all or none. Those whose id is on the shelf already take the place of what is there.
	 *
	 * @param stocks no two with the same id or the same name
	 * @throws ShelfException if a name is that of another stock on the shelf
	 */
	public void put(Collection<Stock> stocks) throws StoreException, ShelfException {
		store.change(connection -> {
			Set<String> there = StockRows.ids(connection);
			Set<String> ids = stocks.stream().map(Stock::id).collect(Collectors.toSet());
			Set<String> others = StockRows.nameKeys(connection, id -> !ids.contains(id));
			for (Stock stock : stocks) {
				if (others.contains(NameKey.of(stock.name()))) {
					throw new ShelfException(NLS.bind(Messages.StockShelf_nameTaken, stock.name()));
				}
			}
			StockRows.replace(connection, stocks.stream().filter(stock -> there.contains(stock.id())).toList());
			StockRows.insert(connection, stocks.stream().filter(stock -> !there.contains(stock.id())).toList());
			return null;
		});
	}

	/**
	 * Puts a changed stock in the place of the one with its id.
	 *
	 * @param revision of the stock that was looked at when it was changed
	 * @throws ShelfException if it is gone, has been changed by somebody else since, or its new name is taken
	 */
	public ShelvedStock change(Stock stock, long revision) throws StoreException, ShelfException {
		return store.change(connection -> {
			refuseOther(connection, stock.id(), revision);
			Optional<String> sameName = StockRows.idOfName(connection, stock.name());
			if (sameName.isPresent() && !sameName.get().equals(stock.id())) {
				throw new ShelfException(NLS.bind(Messages.StockShelf_nameTaken, stock.name()));
			}
			if (!StockRows.update(connection, stock, revision)) {
				throw new ShelfException(NLS.bind(Messages.StockShelf_changed, stock.name()));
			}
			return new ShelvedStock(stock, revision + 1);
		});
	}

	/**
	 * More on hand, or less below zero, whatever else somebody changes at the same time.
	 *
	 * @throws ShelfException        if it is gone
	 * @throws InvalidStockException if less than none would be left
	 */
	public ShelvedStock count(String id, BigDecimal more) throws StoreException, ShelfException {
		return store.change(connection -> count(connection, id, more));
	}

	/** The same within a transaction of somebody else's, in a store opened with {@link #AREA}. */
	public static ShelvedStock count(Connection connection, String id, BigDecimal more)
			throws SQLException, ShelfException {
		ShelvedStock found = StockRows.find(connection, id)
				.orElseThrow(() -> new ShelfException(NLS.bind(Messages.StockShelf_gone, id)));
		Stock counted = found.stock().withMore(more);
		if (!StockRows.update(connection, counted, found.revision())) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_changed, counted.name()));
		}
		return new ShelvedStock(counted, found.revision() + 1);
	}

	/** Looks a stock up within a transaction of somebody else's. */
	public static Optional<ShelvedStock> find(Connection connection, String id) throws SQLException {
		return StockRows.find(connection, id);
	}

	/**
	 * Puts stocks in the places of others, all or none, so that a change can be taken back whole.
	 *
	 * @param exchanges no two of the same stock
	 * @return what lies there now, in the order of the exchanges; empty where a stock was taken away
	 * @throws ShelfException if something does not lie there as it was seen, or a name is taken
	 */
	public List<Optional<ShelvedStock>> exchange(List<StockExchange> exchanges) throws StoreException, ShelfException {
		return store.change(connection -> {
			Map<String, Long> there = StockRows.revisions(connection);
			for (StockExchange each : exchanges) {
				each.refuseOther(there.get(each.id()));
			}
			Set<String> ids = exchanges.stream().map(StockExchange::id).collect(Collectors.toSet());
			Set<String> names = StockRows.nameKeys(connection, id -> !ids.contains(id));
			for (StockExchange each : exchanges) {
				if (each.after().isPresent() && !names.add(NameKey.of(each.after().get().name()))) {
					throw new ShelfException(NLS.bind(Messages.StockShelf_nameTaken, each.after().get().name()));
				}
			}
			for (StockExchange each : exchanges) {
				if (each.after().isEmpty()) {
					StockRows.delete(connection, each.id());
				}
			}
			StockRows.replace(connection, exchanges.stream().filter(each -> each.before().isPresent())
					.flatMap(each -> each.after().stream()).toList());
			StockRows.insertShelved(connection, exchanges.stream().filter(each -> each.before().isEmpty())
					.flatMap(each -> each.result().stream()).toList());
			return exchanges.stream().map(StockExchange::result).toList();
		});
	}

	/** @throws ShelfException if it is gone, or has been changed by somebody else since */
	public void remove(String id, long revision) throws StoreException, ShelfException {
		store.change(connection -> {
			refuseOther(connection, id, revision);
			StockRows.delete(connection, id);
			return null;
		});
	}

	private static void refuseTaken(Connection connection, Stock stock) throws SQLException, ShelfException {
		if (StockRows.find(connection, stock.id()).isPresent()) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_idTaken, stock.id()));
		}
		if (StockRows.idOfName(connection, stock.name()).isPresent()) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_nameTaken, stock.name()));
		}
	}

	private static void refuseOther(Connection connection, String id, long revision)
			throws SQLException, ShelfException {
		ShelvedStock there = StockRows.find(connection, id)
				.orElseThrow(() -> new ShelfException(NLS.bind(Messages.StockShelf_gone, id)));
		if (there.revision() != revision) {
			throw new ShelfException(NLS.bind(Messages.StockShelf_changed, there.stock().name()));
		}
	}
}
