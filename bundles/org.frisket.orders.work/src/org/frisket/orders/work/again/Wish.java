package org.frisket.orders.work.again;

import java.time.LocalDate;
import java.util.Optional;

import org.frisket.model.Stage;

/**
 * What is asked of a job that is made again.
 *
 * @param due      when it must be ready
 * @param quantity how many copies; empty for as many as before
 * @param stage    at which it begins, an enquiry or ordered
 */
public record Wish(Optional<LocalDate> due, Optional<Integer> quantity, Stage stage) {

	/** @throws IllegalArgumentException for less than one copy; the message is for people */
	public Wish {
		if (quantity.isPresent() && quantity.get() < 1) {
			throw new IllegalArgumentException(Messages.Wish_quantity);
		}
		if (stage != Stage.ENQUIRY && stage != Stage.ORDERED) {
			throw new IllegalArgumentException("a repeat does not begin as " + stage);
		}
	}

	/** As many as before, ordered, on a day that is still to be agreed. */
	public static Wish same() {
		return new Wish(Optional.empty(), Optional.empty(), Stage.ORDERED);
	}
}
