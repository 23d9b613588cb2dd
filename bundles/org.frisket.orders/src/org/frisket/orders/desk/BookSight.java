package org.frisket.orders.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

import org.frisket.orders.Entry;

/** What was found in the order book. */
public final class BookSight {

	private final BookTable table;
	private final BookQuery query;
	private final LocalDate today;
	private final int[] places;
	private final List<BookGroup> groups;

	BookSight(BookTable table, BookQuery query, LocalDate today, int[] places) {
		this.table = table;
		this.query = query;
		this.today = today;
		this.places = places;
		groups = query.grouping() == BookGrouping.NONE ? List.of() : table.groups(query.grouping(), places);
	}

	public BookTable table() {
		return table;
	}

	public BookQuery query() {
		return query;
	}

	/** The day of which it is true. */
	public LocalDate today() {
		return today;
	}

	/** How many jobs were found, each once. */
	public int size() {
		return places.length;
	}

	/** The jobs in their order, without groups. */
	public List<Entry> jobs() {
		return IntStream.of(places).mapToObj(table.jobs()::get).toList();
	}

	/** The groups in their order; empty if there are none. */
	public List<BookGroup> groups() {
		return groups;
	}

	/** How many of them are late. */
	public int late() {
		return (int) IntStream.of(places).filter(place -> table.jobs().get(place).isLate(today)).count();
	}

	/** What is seen of it, line by line. @param folded values of groups of which only the heading is seen */
	public BookLines lines(Set<String> folded) {
		return new BookLines(this, folded);
	}

	/** Whether all that another query would find has been found, in its order. */
	boolean isWider(BookTable of, BookQuery other, LocalDate day) {
		if (of != table || !day.equals(today) || other.choice() != query.choice() && query.choice() != BookChoice.ALL
				|| other.column() != query.column() || other.descending() != query.descending()) {
			return false;
		}
		List<String> words = List.of(BookTable.words(other.text()));
		return List.of(BookTable.words(query.text())).stream()
				.allMatch(word -> words.stream().anyMatch(longer -> longer.contains(word)));
	}

	int[] places() {
		return places;
	}
}
