package org.frisket.cli.stock;

import java.io.IOException;
import java.util.Optional;

import org.frisket.cli.line.Refusal;
import org.frisket.cli.line.StudioOption;
import org.frisket.material.ShelfException;
import org.frisket.material.ShelvedStock;
import org.frisket.material.StockShelf;
import org.frisket.studio.Studio;
import org.frisket.studio.store.Store;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The stock shelf of the studio that a verb works for, and the help of such a verb. */
final class ShelfOption {

	@Mixin
	private StudioOption studio = new StudioOption();

	@Option(names = "--help", usageHelp = true, description = "Shows this help.")
	private boolean help;

	/** What is done at the shelf. */
	interface Task<T> {
		T at(StockShelf shelf) throws IOException, ShelfException, Refusal;
	}

	<T> T read(Task<T> task) throws Refusal {
		return at(task, false);
	}

	<T> T change(Task<T> task) throws Refusal {
		return at(task, true);
	}

	private <T> T at(Task<T> task, boolean change) throws Refusal {
		studio.choose();
		try (Store store = change ? Store.open(Studio.folder(), StockShelf.AREA)
				: Store.openForReading(Studio.folder(), StockShelf.AREA)) {
			return task.at(new StockShelf(store));
		} catch (IOException | ShelfException | IllegalArgumentException e) {
			throw new Refusal(e);
		}
	}

	/** By its id or its name. */
	static ShelvedStock find(StockShelf shelf, String stock) throws IOException, Refusal {
		Optional<ShelvedStock> found = shelf.find(stock);
		if (found.isEmpty()) {
			found = shelf.named(stock);
		}
		return found.orElseThrow(() -> new Refusal("there is no stock “" + stock + "”; see frisket stock list"));
	}
}
