package org.frisket.orders.customers;

import java.util.List;

/**
 * What became of a customer that was erased.
 *
 * @param customer   as it is kept now
 * @param jobs       numbers of the jobs it had
 * @param stillNamed numbers of those whose wording, or what their elements and layers are called, still has the name:
 *                   they are for somebody to look at
 */
public record Erasure(Customer customer, List<Long> jobs, List<Long> stillNamed) {

	public Erasure {
		jobs = List.copyOf(jobs);
		stillNamed = List.copyOf(stillNamed);
	}
}
