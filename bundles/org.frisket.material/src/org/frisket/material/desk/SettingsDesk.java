package org.frisket.material.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;

import org.frisket.material.ShelvedStock;
import org.frisket.material.StockShelf;
import org.frisket.material.trials.JdbcSettingsStore;
import org.frisket.material.trials.SettingsArea;
import org.frisket.material.trials.SettingsStore;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Databases;
import org.frisket.studio.store.Store;

/**
 * The settings of a studio for one piece of work. Every call opens the store and closes it again, so that others get
 * their turn; it may wait for them for some seconds, so never call it where somebody waits for the screen.
 */
public final class SettingsDesk {

	/**
	 * What is done with the settings.
	 *
	 * @param <T> what comes of it
	 * @param <X> what else may be wrong; nothing is kept then
	 */
	@FunctionalInterface
	public interface Work<T, X extends Exception> {

		T with(SettingsStore settings) throws SQLException, X;
	}

	private SettingsDesk() {
	}

	/**
	 * Looks something up. A studio whose store is not there has kept nothing.
	 *
	 * @throws IOException with a message for people, if the store cannot be used
	 */
	public static <T, X extends Exception> T read(StudioFolder studio, Work<T, X> work) throws IOException, X {
		try (Store store = Store.openForReading(studio, SettingsArea.AREA)) {
			return store.<T, X>read(connection -> work.with(new JdbcSettingsStore(connection)));
		}
	}

	/**
	 * Changes something, wholly or not at all.
	 *
	 * @throws IOException with a message for people, if the store cannot be used or written
	 */
	public static <T, X extends Exception> T change(StudioFolder studio, Work<T, X> work) throws IOException, X {
		try (Store store = Store.open(studio, SettingsArea.AREA)) {
			return store.<T, X>change(connection -> work.with(new JdbcSettingsStore(connection)));
		}
	}

	/**
	 * All that the studio knows, as it is now.
	 *
	 * @throws IOException with a message for people, if the store cannot be used
	 */
	public static DeskState look(StudioFolder studio) throws IOException {
		try (Store store = Store.openForReading(studio, StockShelf.AREA, SettingsArea.AREA)) {
			var stocks = new StockShelf(store).list().stream().map(ShelvedStock::stock).toList();
			boolean fixed = Databases.address(studio).isEmpty() && Files.exists(Store.file(studio))
					&& !Files.isWritable(Store.file(studio));
			return store.<DeskState, SQLException>read(connection -> {
				SettingsStore settings = new JdbcSettingsStore(connection);
				return new DeskState(stocks, settings.machines(), settings.tools(), settings.rules(), settings.trials(),
						settings.sheets(), settings.runs(), fixed);
			});
		} catch (SQLException e) {
			throw new IOException(e.getMessage(), e);
		}
	}
}
