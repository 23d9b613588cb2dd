package org.frisket.orders.customers;

import java.util.List;

/**
 * Two customers that were made one.
 *
 * @param gone   whose jobs went over
 * @param before the one that stays, as it was
 * @param after  the same as it is since
 * @param jobs   numbers of those that went over
 */
public record Merger(Customer gone, Customer before, Customer after, List<Long> jobs) {

	public Merger {
		jobs = List.copyOf(jobs);
	}
}
