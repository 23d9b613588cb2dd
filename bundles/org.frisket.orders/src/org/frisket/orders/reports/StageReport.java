package org.frisket.orders.reports;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;

/**
 * How many jobs stand at each stage, and for how long. Ages are days of the calendar: what came yesterday at midnight less
 * a minute is a day old at noon, also where a night was an hour longer.
 */
public record StageReport(List<Row> rows) {

	/** Where ages part, in days: up to these, and more than the last. */
	static final List<Integer> AGES = List.of(1, 7, 14, 30);

	/**
	 * The jobs of a stage.
	 *
	 * @param ages   how many of them are up to 1, 7, 14, 30 days old, and older; each is counted once
	 * @param oldest days; 0 without jobs
	 * @param late   how many should be ready by now
	 */
	public record Row(Stage stage, int jobs, List<Integer> ages, long oldest, int late) {

		public Row {
			ages = List.copyOf(ages);
		}
	}

	public StageReport {
		rows = List.copyOf(rows);
	}

	/** @param zone of the studio's calendar */
	public static StageReport of(List<Entry> entries, Instant now, ZoneId zone) {
		LocalDate today = now.atZone(zone).toLocalDate();
		List<Row> rows = new ArrayList<>();
		for (Stage stage : Stage.values()) {
			List<Entry> there = entries.stream().filter(entry -> entry.stage() == stage).toList();
			Integer[] ages = new Integer[AGES.size() + 1];
			Arrays.fill(ages, 0);
			long oldest = 0;
			for (Entry entry : there) {
				long days = Math.max(0, ChronoUnit.DAYS.between(entry.since().atZone(zone).toLocalDate(), today));
				oldest = Math.max(oldest, days);
				ages[(int) AGES.stream().filter(age -> age < days).count()]++;
			}
			rows.add(new Row(stage, there.size(), List.of(ages), oldest,
					(int) there.stream().filter(entry -> entry.isLate(today)).count()));
		}
		return new StageReport(rows);
	}

	/** As a table with headers. */
	public String toCsv() {
		List<List<String>> table = new ArrayList<>();
		table.add(List.of("stage", "jobs", "up to 1 day", "2 to 7 days", "8 to 14 days", "15 to 30 days", "over 30 days",
				"oldest days", "late"));
		for (Row row : rows) {
			List<String> cells = new ArrayList<>(List.of(row.stage().getLiteral(), Integer.toString(row.jobs())));
			row.ages().forEach(age -> cells.add(Integer.toString(age)));
			cells.add(Long.toString(row.oldest()));
			cells.add(Integer.toString(row.late()));
			table.add(cells);
		}
		return Tables.csv(table);
	}
}
