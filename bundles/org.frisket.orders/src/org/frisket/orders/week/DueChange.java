package org.frisket.orders.week;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Optional;

import org.frisket.orders.Entry;
import org.frisket.orders.JobChangedException;
import org.frisket.orders.OrderBook;
import org.frisket.orders.OrderException;
import org.frisket.orders.StoredJob;

/**
 * A job's way from one day on which it is due to another.
 *
 * @param number of the job
 * @param from   when it was due; empty for no day
 * @param to     when it is due now
 */
public record DueChange(long number, Optional<LocalDate> from, Optional<LocalDate> to) {

	/** The same way back. */
	public DueChange back() {
		return new DueChange(number, to, from);
	}

	/**
	 * Goes it.
	 *
	 * @throws JobChangedException if somebody has said another day since; nothing is changed then
	 */
	public Entry go(OrderBook book, String person) throws IOException, OrderException {
		StoredJob stored = book.open(number);
		if (!stored.entry().due().equals(from)) {
			throw new JobChangedException(stored.entry());
		}
		stored.job().setDue(to.orElse(null));
		return book.save(stored.job(), stored.entry().revision(), person);
	}
}
