package org.frisket.orders.work;

import java.util.List;

import org.frisket.material.StockShelf;
import org.frisket.material.trials.SettingsArea;
import org.frisket.orders.OrderBook;
import org.frisket.sheets.leftovers.Leftovers;
import org.frisket.studio.store.Area;

/** All that has tables in a studio's store. */
public final class StudioAreas {

	/** Each after those it refers to. */
	public static final List<Area> ALL = List.of(StockShelf.AREA, SettingsArea.AREA, OrderBook.AREA, Leftovers.AREA,
			RunArea.AREA);

	private StudioAreas() {
	}
}
