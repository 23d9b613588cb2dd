package org.frisket.ui.orders.internal.book;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

import org.frisket.material.StockShelf;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;
import org.frisket.ui.studio.StoreJob;

/** What the stocks of the studio's shelf are called, by their ids. */
final class StockNames {

	private StockNames() {
	}

	/** Reads them, in a while. @param read told on the UI thread; where the shelf cannot be read, ids have to do */
	static void read(Consumer<Map<String, String>> read) {
		StoreJob<Map<String, String>> job = new StoreJob<>(Messages.StockNames_reading, StockNames::look, read,
				refused -> {
			// the order book tells what is wrong with the store
		});
		job.setSystem(true);
		job.schedule();
	}

	private static Map<String, String> look() throws IOException {
		Map<String, String> names = new TreeMap<>();
		try (Store store = Store.openForReading(Studio.folder(), StockShelf.AREA)) {
			new StockShelf(store).list().forEach(shelved -> names.put(shelved.stock().id(), shelved.stock().name()));
		}
		return names;
	}
}
