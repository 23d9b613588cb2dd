package org.frisket.orders;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;

import org.eclipse.osgi.util.NLS;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/**
 * What somebody asks for.
 *
 * @param customer name of whom it is for; empty if nobody is named
 */
public record NewOrder(String title, String customer, Optional<LocalDate> due, int quantity, String notes) {

	private static final int LONGEST_TITLE = 1000;
	private static final int LONGEST_NAME = 200;

	/** @throws IllegalArgumentException without a title, or with less than one copy; the message is for people */
	public NewOrder {
		title = title.strip();
		customer = customer.strip();
		if (title.isEmpty()) {
			throw new IllegalArgumentException(Messages.NewOrder_noTitle);
		}
		if (title.length() > LONGEST_TITLE || customer.length() > LONGEST_NAME) {
			throw new IllegalArgumentException(NLS.bind(Messages.NewOrder_tooLong, LONGEST_TITLE, LONGEST_NAME));
		}
		if (quantity < 1) {
			throw new IllegalArgumentException(Messages.NewOrder_quantity);
		}
	}

	/** With an id of its own. */
	public Job toJob() {
		Job job = Jobs.create(UUID.randomUUID().toString(), title);
		job.setCustomer(customer.isEmpty() ? null : customer);
		job.setDue(due.orElse(null));
		job.setQuantity(quantity);
		job.setNotes(notes.isBlank() ? null : notes);
		return job;
	}
}
