package org.frisket.orders.desk;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;

import org.frisket.model.Stage;
import org.frisket.orders.Entry;

/** What an order book comes to as a whole: where two differ, a job of them does. */
public record BookState(Map<Stage, Tally> tallies) {

	/**
	 * Of the jobs of a stage.
	 *
	 * @param jobs      how many there are
	 * @param revisions of their documents, summed up
	 * @param latest    when the last of them was changed
	 */
	public record Tally(long jobs, long revisions, Instant latest) {

		private Tally and(Tally other) {
			return new Tally(jobs + other.jobs, revisions + other.revisions,
					latest.isBefore(other.latest) ? other.latest : latest);
		}
	}

	public BookState {
		tallies = Map.copyOf(tallies);
	}

	static BookState of(Iterable<Entry> jobs) {
		Map<Stage, Tally> tallies = new EnumMap<>(Stage.class);
		jobs.forEach(job -> tallies.merge(job.stage(), new Tally(1, job.revision(), job.changed()), Tally::and));
		return new BookState(tallies);
	}
}
