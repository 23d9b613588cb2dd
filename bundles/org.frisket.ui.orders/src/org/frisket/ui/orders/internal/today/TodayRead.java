package org.frisket.ui.orders.internal.today;

import java.io.IOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.osgi.util.NLS;
import org.frisket.material.StockShelf;
import org.frisket.orders.OrderException;
import org.frisket.orders.paper.ColourWords;
import org.frisket.orders.work.RunCautions;
import org.frisket.orders.work.StockColour;
import org.frisket.orders.work.Today;
import org.frisket.orders.work.TodayList;
import org.frisket.studio.StudioFolder;
import org.frisket.studio.store.Store;

/**
 * What is to be done, and what else the screen says of it.
 *
 * @param stocks   names of the shelf's stock by id
 * @param cautions what to mind before the machine is started
 */
record TodayRead(Today today, Map<String, String> stocks, List<String> cautions) {

	/** Not for the UI thread. @param list that remembers what it read before */
	static TodayRead of(StudioFolder studio, TodayList list, LocalDate day) throws IOException, OrderException {
		Today today = list.read(day);
		Map<String, String> names = new HashMap<>();
		try (Store store = Store.openForReading(studio, StockShelf.AREA)) {
			new StockShelf(store).list().forEach(each -> names.put(each.stock().id(), each.stock().name()));
		}
		Set<String> cut = new TreeSet<>();
		today.cut().forEach(group -> cut.add(group.of().stock()));
		return new TodayRead(today, names, RunCautions.of(studio, cut));
	}

	/** As people call a stock and colour. */
	String name(StockColour of) {
		String stock = of.stock().isEmpty() ? Messages.TodayRead_noStock : stocks.getOrDefault(of.stock(), of.stock());
		return of.colour().isEmpty() ? stock : NLS.bind(Messages.TodayRead_colour, stock, colour(of));
	}

	/** In words; with its code where the words do not tell it from another colour of the same stock. */
	private String colour(StockColour of) {
		Optional<String> words = ColourWords.of(of.colour());
		if (words.isEmpty()) {
			return of.colour();
		}
		boolean alone = Stream.concat(today.print().stream(), today.cut().stream()).map(Today.Group::of).filter(other -> !other.equals(of))
				.noneMatch(other -> other.stock().equals(of.stock()) && ColourWords.of(other.colour()).equals(words));
		return alone ? words.get() : words.get() + ' ' + of.colour();
	}
}
