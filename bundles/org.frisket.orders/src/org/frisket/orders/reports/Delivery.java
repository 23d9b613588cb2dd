package org.frisket.orders.reports;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * A job that was delivered.
 *
 * @param at when it was said to be, the last time
 */
public record Delivery(long number, String title, Optional<LocalDate> due, Instant at) {

	/** How many days it came too late; nothing or less if it came in time, empty if no day was agreed. */
	public Optional<Long> daysLate(ZoneId zone) {
		return due.map(day -> ChronoUnit.DAYS.between(day, at.atZone(zone).toLocalDate()));
	}
}
