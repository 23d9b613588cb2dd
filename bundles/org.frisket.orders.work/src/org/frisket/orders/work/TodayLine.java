package org.frisket.orders.work;

import java.time.LocalDate;
import java.util.Comparator;

import org.frisket.orders.Entry;

/**
 * A job, and what of it is still to be done in one stock and colour.
 *
 * @param of      the stock and colour; of what is only to be finished it has no meaning
 * @param ordered how many pieces are wanted
 * @param made    how many there are
 * @param coming  how many are on runs that are not done
 */
public record TodayLine(Entry entry, StockColour of, int ordered, int made, int coming) {

	/** What is due first; of the same day the lower number, what has no day last. */
	public static final Comparator<TodayLine> BY_DUE = Comparator
			.comparing((TodayLine line) -> line.entry().due().orElse(LocalDate.MAX))
			.thenComparing(line -> line.entry().number()).thenComparing(TodayLine::of);

	/** Pieces that are not made yet. */
	public int missing() {
		return Math.max(0, ordered - made);
	}

	/** Pieces that are neither made nor on a run. */
	public int unplanned() {
		return Math.max(0, missing() - coming);
	}
}
