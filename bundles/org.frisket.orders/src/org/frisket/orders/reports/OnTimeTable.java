package org.frisket.orders.reports;

import java.time.Clock;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The share of jobs that were delivered by the end of the day they were due, as a table for people: by the month of their
 * delivery, or by its week after ISO 8601. Months and weeks without deliveries have no row.
 */
final class OnTimeTable {

	private static final double ALL = 100;

	/** The deliveries of a while. */
	private static final class While {

		private int delivered;
		private int dated;
		private int onTime;
		private long daysLate;

		void add(Optional<Long> late) {
			delivered++;
			if (late.isPresent()) {
				dated++;
				onTime += late.get() <= 0 ? 1 : 0;
				daysLate += Math.max(0, late.get());
			}
		}

		List<OptionalDouble> values() {
			return List.of(dated == 0 ? OptionalDouble.empty() : OptionalDouble.of(ALL * onTime / dated),
					OptionalDouble.of(delivered), OptionalDouble.of(dated), OptionalDouble.of(onTime),
					dated == onTime ? OptionalDouble.empty() : OptionalDouble.of(daysLate / (double) (dated - onTime)));
		}
	}

	private OnTimeTable() {
	}

	static Report byMonth(List<Delivery> deliveries, Clock clock) {
		return of(deliveries, clock, Messages.OnTimeTable_byMonth, Messages.OnTimeTable_month,
				day -> YearMonth.from(day).toString());
	}

	static Report byWeek(List<Delivery> deliveries, Clock clock) {
		return of(deliveries, clock, Messages.OnTimeTable_byWeek, Messages.OnTimeTable_week, OnTimeTable::week);
	}

	/** As ISO 8601 writes it, such as 2026-W49; the year is that of its Thursday. */
	private static String week(LocalDate day) {
		return String.format("%d-W%02d", day.get(IsoFields.WEEK_BASED_YEAR), day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
	}

	private static Report of(List<Delivery> deliveries, Clock clock, String title, String heading,
			Function<LocalDate, String> name) {
		ZoneId zone = clock.getZone();
		TreeMap<String, While> whiles = new TreeMap<>();
		for (Delivery delivery : deliveries) {
			whiles.computeIfAbsent(name.apply(delivery.at().atZone(zone).toLocalDate()), each -> new While())
					.add(delivery.daysLate(zone));
		}
		List<Report.Row> rows = new ArrayList<>();
		whiles.forEach((when, each) -> rows.add(new Report.Row(when, each.values())));
		return new Report(title, LocalDate.now(clock), heading,
				List.of(new Report.Column(Messages.OnTimeTable_rate, "%", 0, true),
						new Report.Column(Messages.OnTimeTable_delivered, Messages.StageTable_jobs, 0, false),
						new Report.Column(Messages.OnTimeTable_dated, Messages.StageTable_jobs, 0, false),
						new Report.Column(Messages.OnTimeTable_onTime, Messages.StageTable_jobs, 0, false),
						new Report.Column(Messages.OnTimeTable_daysLate, Messages.StageTable_days, 1, false)),
				rows, false, ALL);
	}
}
