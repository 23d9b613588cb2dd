package org.frisket.orders.intake;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.eclipse.osgi.util.NLS;

/**
 * In what order a table writes the parts of a day. A day that begins with a year of four digits is read by any of them, for
 * it cannot be mistaken.
 */
public enum DateForm {

	/** As ISO 8601 has it: 2027-03-01. */
	ISO("year-month-day"),
	/** The day first: 1.3.2027, 01/03/2027. */
	DMY("day-month-year"),
	/** The month first: 3/1/2027. */
	MDY("month-day-year");

	private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})");
	private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-./]) ?(\\d{1,2})\\2 ?(\\d{4}|\\d{2})");
	private static final int CENTURY = 2000;

	private final String order;

	DateForm(String order) {
		this.order = order;
	}

	public String word() {
		return name().toLowerCase(Locale.ROOT);
	}

	/** @throws IllegalArgumentException if there is no such form; the message is for people */
	public static DateForm of(String word) {
		for (DateForm form : values()) {
			if (form.word().equals(word.strip().toLowerCase(Locale.ROOT))) {
				return form;
			}
		}
		throw new IllegalArgumentException(NLS.bind(Messages.DateForm_none, word));
	}

	/**
	 * A day as a table writes it.
	 *
	 * @param form what was said of the table; if nothing was, the day is first where dots part it, and nothing is taken
	 *             for granted where other signs do
	 * @throws IllegalArgumentException if it is no day; the message is for people
	 */
	static LocalDate parse(String text, Optional<DateForm> form) {
		String day = text.strip();
		Matcher first = YEAR_FIRST.matcher(day);
		Matcher last = YEAR_LAST.matcher(day);
		try {
			if (first.matches()) {
				return date(first.group(1), first.group(2), first.group(3));
			}
			if (last.matches() && form.filter(said -> said == ISO).isEmpty()) {
				if (form.isEmpty() && !last.group(2).equals(".")) {
					throw new IllegalArgumentException(NLS.bind(Messages.DateForm_ambiguous, day));
				}
				boolean monthFirst = form.filter(said -> said == MDY).isPresent();
				return date(last.group(4), last.group(monthFirst ? 1 : 3), last.group(monthFirst ? 3 : 1));
			}
		} catch (DateTimeException noDay) {
			throw new IllegalArgumentException(NLS.bind(Messages.DateForm_noDay, day), noDay);
		}
		throw new IllegalArgumentException(NLS.bind(form.isEmpty() ? Messages.DateForm_unreadable : Messages.DateForm_other,
				day, form.map(said -> said.order).orElse("")));
	}

	private static LocalDate date(String year, String month, String day) {
		int y = Integer.parseInt(year);
		return LocalDate.of(year.length() == 2 ? CENTURY + y : y, Integer.parseInt(month), Integer.parseInt(day));
	}
}
