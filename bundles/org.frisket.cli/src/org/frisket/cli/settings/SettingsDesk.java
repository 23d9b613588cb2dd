package org.frisket.cli.settings;

import java.io.IOException;
import java.sql.SQLException;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.material.ShelvedStock;
import org.frisket.material.Stock;
import org.frisket.material.StockShelf;
import org.frisket.material.trials.SettingsStore;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;

/** The studio's settings for one piece of work. */
final class SettingsDesk {

	/** What is done with the settings. */
	@FunctionalInterface
	interface Work<T> {

		T with(SettingsStore settings) throws SQLException, Refusal;
	}

	private SettingsDesk() {
	}

	/** Looks something up. A studio whose store is not there has kept nothing. */
	static <T> T read(Work<T> work) throws Refusal {
		try {
			return org.frisket.material.desk.SettingsDesk.<T, Refusal>read(Studio.folder(), work::with);
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** Changes something, wholly or not at all. */
	static <T> T change(Work<T> work) throws Refusal {
		try {
			return org.frisket.material.desk.SettingsDesk.<T, Refusal>change(Studio.folder(), work::with);
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** A stock of the studio's shelf. */
	static Optional<Stock> shelved(String id) throws Refusal {
		try (Store store = Store.openForReading(Studio.folder(), StockShelf.AREA)) {
			return new StockShelf(store).find(id).map(ShelvedStock::stock);
		} catch (IOException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}
}
