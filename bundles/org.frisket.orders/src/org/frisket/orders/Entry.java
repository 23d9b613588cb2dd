package org.frisket.orders;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

import org.frisket.model.Stage;

/**
 * A job as it stands in the order book.
 *
 * @param id        of the job; never shown
 * @param number    on the docket
 * @param revision  of its document: one more with every save
 * @param customer  name of whom it is for; empty if nobody is named
 * @param since     when it came to its stage
 * @param stock     ids of the stocks of its layers, each once, in their order
 * @param words     all that is searched, in lower case
 * @param changed   when anything of it was changed last, and by whom
 */
public record Entry(String id, long number, long revision, String title, String customer, Stage stage, Instant since,
		Optional<LocalDate> due, int quantity, String stock, String words, Instant changed, String changedBy) {

	/** As it stands once somebody has brought it to a stage. */
	public Entry at(Stage to, Instant now, String person) {
		return new Entry(id, number, revision, title, customer, to, now, due, quantity, stock, words, now, person);
	}

	/** Whether it should be ready by now and is not. */
	public boolean isLate(LocalDate today) {
		return !isClosed() && due.isPresent() && due.get().isBefore(today);
	}

	/** Whether nothing is left to be done. */
	public boolean isClosed() {
		return stage == Stage.DELIVERED || stage == Stage.CANCELLED;
	}
}
