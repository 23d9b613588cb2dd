package org.frisket.orders.paper;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;

/** Days in the user's language. */
public final class Days {

	private Days() {
	}

	/** With the day of the week. */
	public static String whole(LocalDate day) {
		return day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL));
	}

	/** In digits, or nearly so. */
	public static String brief(LocalDate day) {
		return day.format(DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM));
	}
}
