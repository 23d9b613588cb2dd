package org.frisket.orders.desk;

import java.util.Comparator;

import org.frisket.model.Stage;

/** Jobs that have something in common. */
public final class BookGroup {

	private final BookGrouping grouping;
	private final String value;
	private final int[] places;

	BookGroup(BookGrouping grouping, String value, int[] places) {
		this.grouping = grouping;
		this.value = value;
		this.places = places;
	}

	public BookGrouping grouping() {
		return grouping;
	}

	/** What they have in common, as {@link BookGrouping} says; empty where they have none. */
	public String value() {
		return value;
	}

	/** How many jobs. */
	public int size() {
		return places.length;
	}

	int place(int index) {
		return places[index];
	}

	static Comparator<BookGroup> order(BookNames names) {
		return Comparator.comparing((BookGroup group) -> group.value.isEmpty()).thenComparing(group -> group.key(names))
				.thenComparing(BookGroup::value);
	}

	private String key(BookNames names) {
		return switch (grouping) {
		case STAGE -> "%02d".formatted(Stage.valueOf(value).ordinal());
		case STOCK -> SortKey.of(names.stock(value));
		case CUSTOMER -> SortKey.of(value);
		case DUE_WEEK, NONE -> value;
		};
	}
}
