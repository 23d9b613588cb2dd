package org.frisket.orders.desk;

/**
 * What somebody wants to see of the order book, and how.
 *
 * @param text       every word of it occurs somewhere in a job
 * @param descending whether the last comes first
 */
public record BookQuery(String text, BookChoice choice, BookColumn column, boolean descending, BookGrouping grouping) {

	/** Everything, the latest number first. */
	public static final BookQuery ALL = new BookQuery("", BookChoice.ALL, BookColumn.NUMBER, true, BookGrouping.NONE);

	public BookQuery withText(String other) {
		return new BookQuery(other, choice, column, descending, grouping);
	}

	/** With the groups that go with the choice. */
	public BookQuery withChoice(BookChoice other) {
		return new BookQuery(text, other, column, descending, other.grouping());
	}

	public BookQuery withGrouping(BookGrouping other) {
		return new BookQuery(text, choice, column, descending, other);
	}

	/** By a column, the first first; the other way round if it is sorted by it already. */
	public BookQuery sortedBy(BookColumn other) {
		return new BookQuery(text, choice, other, other == column && !descending, grouping);
	}

	/** Whether something may be left out. */
	public boolean isNarrow() {
		return !text.isBlank() || choice != BookChoice.ALL;
	}
}
