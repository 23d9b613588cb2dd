package org.frisket.orders.reports;

import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * How many jobs were delivered by the end of the day they were due, by the month of their delivery. A job without a day is
 * neither in time nor late.
 */
public record OnTimeReport(List<Row> rows) {

	/**
	 * The deliveries of a month.
	 *
	 * @param dated    how many of them had a day to be ready by
	 * @param onTime   how many of those were
	 * @param daysLate of those that were not, altogether
	 */
	public record Row(YearMonth month, int delivered, int dated, int onTime, long daysLate) {

		/** The share of those with a day that were in time; empty without any. */
		public OptionalDouble rate() {
			return dated == 0 ? OptionalDouble.empty() : OptionalDouble.of(onTime / (double) dated);
		}

		/** How many days a late one was late; empty without any. */
		public OptionalDouble meanDaysLate() {
			return dated == onTime ? OptionalDouble.empty() : OptionalDouble.of(daysLate / (double) (dated - onTime));
		}

		private Row with(Optional<Long> late) {
			return new Row(month, delivered + 1, dated + (late.isPresent() ? 1 : 0),
					onTime + (late.filter(days -> days <= 0).isPresent() ? 1 : 0), daysLate + Math.max(0, late.orElse(0L)));
		}
	}

	public OnTimeReport {
		rows = List.copyOf(rows);
	}

	/** @param zone of the studio's calendar */
	public static OnTimeReport of(List<Delivery> deliveries, ZoneId zone) {
		TreeMap<YearMonth, Row> rows = new TreeMap<>();
		for (Delivery delivery : deliveries) {
			YearMonth month = YearMonth.from(delivery.at().atZone(zone));
			rows.put(month, rows.getOrDefault(month, new Row(month, 0, 0, 0, 0)).with(delivery.daysLate(zone)));
		}
		return new OnTimeReport(List.copyOf(rows.values()));
	}

	/** As a table with headers; a cell without a value is empty. */
	public String toCsv() {
		List<List<String>> table = new ArrayList<>();
		table.add(List.of("month", "delivered", "with a day", "in time", "rate", "mean days late"));
		for (Row row : rows) {
			table.add(List.of(row.month().toString(), Integer.toString(row.delivered()), Integer.toString(row.dated()),
					Integer.toString(row.onTime()), text(row.rate(), "%.3f"), text(row.meanDaysLate(), "%.1f")));
		}
		return Tables.csv(table);
	}

	private static String text(OptionalDouble value, String form) {
		return value.isPresent() ? String.format(Locale.ROOT, form, value.getAsDouble()) : "";
	}
}
