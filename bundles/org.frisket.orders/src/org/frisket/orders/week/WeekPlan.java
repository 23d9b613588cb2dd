package org.frisket.orders.week;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.frisket.orders.Entry;

/**
 * The jobs that are still to be made by the days on which they are due: those that should have been ready before this
 * week, those of each of its seven days, and those after it. A week begins on Monday, as in ISO 8601. Jobs that nobody
 * has said a day for are in none.
 *
 * @param today   which of the days it is
 * @param columns what is late, seven days, and what comes later
 */
public record WeekPlan(LocalDate today, List<Column> columns) {

	/** How many jobs that come later are listed. */
	public static final int MOST_LATER = 50;

	private static final int DAYS = 7;
	private static final Comparator<Entry> ORDER = Comparator.comparing((Entry entry) -> entry.due().orElseThrow())
			.thenComparing(Entry::stage).thenComparing(Entry::number);

	/** What a column holds. */
	public enum Kind {
		LATE, DAY, LATER
	}

	/**
	 * A column.
	 *
	 * @param day  of a column of one day
	 * @param jobs by the day on which they are due, then those first that have the longest way to go
	 * @param more how many are not listed
	 */
	public record Column(Kind kind, Optional<LocalDate> day, List<Entry> jobs, int more) {

		public Column {
			jobs = List.copyOf(jobs);
		}
	}

	/** Where a job stands: the column, and the row in it. */
	public record Place(int column, int row) {
	}

	public WeekPlan {
		columns = List.copyOf(columns);
	}

	/** @param jobs of the order book, in any order */
	public static WeekPlan of(List<Entry> jobs, LocalDate today) {
		LocalDate monday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
		List<List<Entry>> places = new ArrayList<>();
		for (int i = 0; i < DAYS + 2; i++) {
			places.add(new ArrayList<>());
		}
		for (Entry job : jobs) {
			if (!job.isClosed() && job.due().isPresent()) {
				long from = job.due().get().toEpochDay() - monday.toEpochDay();
				places.get((int) Math.max(0, Math.min(DAYS + 1L, from + 1))).add(job);
			}
		}
		places.forEach(place -> place.sort(ORDER));
		List<Column> columns = new ArrayList<>();
		columns.add(new Column(Kind.LATE, Optional.empty(), places.get(0), 0));
		for (int i = 0; i < DAYS; i++) {
			columns.add(new Column(Kind.DAY, Optional.of(monday.plusDays(i)), places.get(i + 1), 0));
		}
		List<Entry> later = places.get(DAYS + 1);
		int listed = Math.min(MOST_LATER, later.size());
		columns.add(new Column(Kind.LATER, Optional.empty(), later.subList(0, listed), later.size() - listed));
		return new WeekPlan(today, columns);
	}

	/** How many jobs are listed. */
	public int size() {
		return columns.stream().mapToInt(column -> column.jobs().size()).sum();
	}

	public Entry job(Place place) {
		return columns.get(place.column()).jobs().get(place.row());
	}

	/** Where a job comes if all columns are gone through one after the other, from 0. */
	public int indexOf(Place place) {
		return columns.subList(0, place.column()).stream().mapToInt(column -> column.jobs().size()).sum() + place.row();
	}

	/** The place of which {@link #indexOf} says this; empty if there is none. */
	public Optional<Place> at(int index) {
		int row = index;
		for (int column = 0; column < columns.size() && row >= 0; column++) {
			int jobs = columns.get(column).jobs().size();
			if (row < jobs) {
				return Optional.of(new Place(column, row));
			}
			row -= jobs;
		}
		return Optional.empty();
	}

	/** Where a job is listed. @param number of it */
	public Optional<Place> find(long number) {
		for (int column = 0; column < columns.size(); column++) {
			List<Entry> jobs = columns.get(column).jobs();
			for (int row = 0; row < jobs.size(); row++) {
				if (jobs.get(row).number() == number) {
					return Optional.of(new Place(column, row));
				}
			}
		}
		return Optional.empty();
	}

	/** The first job of today, else the first one after it, else any; empty if none is listed. */
	public Optional<Place> first() {
		int now = 1 + today.getDayOfWeek().getValue() - DayOfWeek.MONDAY.getValue();
		Optional<Place> next = beside(new Place(now - 1, 0), 1);
		return next.isPresent() ? next : beside(new Place(columns.size(), 0), -1);
	}

	/** The job above or below. @param rows down, or up if negative; the last one where there are fewer */
	public Place along(Place from, int rows) {
		int last = columns.get(from.column()).jobs().size() - 1;
		return new Place(from.column(), Math.max(0, Math.min(last, from.row() + rows)));
	}

	/** The job beside, in the next column that has any. @param step 1 to the right, -1 to the left */
	public Optional<Place> beside(Place from, int step) {
		for (int column = from.column() + step; column >= 0 && column < columns.size(); column += step) {
			int jobs = columns.get(column).jobs().size();
			if (jobs > 0) {
				return Optional.of(new Place(column, Math.min(jobs - 1, from.row())));
			}
		}
		return Optional.empty();
	}
}
