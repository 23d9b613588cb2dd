package org.frisket.orders.desk;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * A day as somebody types it: {@code 2026-12-04} (ISO 8601), as the language writes it, or {@code +5} for in five days.
 */
public final class DueDay {

	private static final Pattern AHEAD = Pattern.compile("\\+\\d{1,4}");

	private DueDay() {
	}

	/**
	 * @param locale whose way of writing days is understood as well
	 * @return empty for an empty text
	 * @throws IllegalArgumentException if it is no day; the message is for people
	 */
	public static Optional<LocalDate> parse(String text, LocalDate today, Locale locale) {
		String day = text.strip();
		if (day.isEmpty()) {
			return Optional.empty();
		}
		if (AHEAD.matcher(day).matches()) {
			return Optional.of(today.plusDays(Integer.parseInt(day.substring(1))));
		}
		for (DateTimeFormatter form : List.of(DateTimeFormatter.ISO_LOCAL_DATE,
				DateTimeFormatter.ofLocalizedDate(FormatStyle.SHORT).withLocale(locale),
				DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale))) {
			try {
				return Optional.of(LocalDate.parse(day, form));
			} catch (DateTimeException otherForm) {
				// the next may do
			}
		}
		throw new IllegalArgumentException(NLS.bind(Messages.DueDay_none, day));
	}
}
