package org.frisket.orders.work;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What somebody says was done of a run.
 *
 * @param pieces      of the jobs on it; those that are not named were not touched
 * @param used        sheets, or metres of rolls, by stock; leftovers are not counted
 * @param seconds     that it took; empty if nobody measured
 * @param closes      whether nothing more of this step is to come; what is missing then is to be planned again
 * @param wentWell    whether the settings are worth remembering
 * @param keepOffcuts whether what is left of the sheets is kept for other jobs
 */
public record RunMark(Step step, List<Count> pieces, SortedMap<StockColour, BigDecimal> used, Optional<BigDecimal> seconds,
		boolean closes, boolean wentWell, boolean keepOffcuts, String remark) {

	/**
	 * Pieces of a job in a stock.
	 *
	 * @param job     its id
	 * @param made    well, beside those that were
	 * @param spoiled beside those that were
	 */
	public record Count(String job, StockColour of, int made, int spoiled) {
	}

	public RunMark {
		Objects.requireNonNull(step);
		pieces = List.copyOf(pieces);
		used = new TreeMap<>(used);
		Objects.requireNonNull(seconds);
		remark = remark == null ? "" : remark.strip();
	}

	/** That all that was left of a run's next step went as planned. @param run that is not done */
	public static RunMark whole(PlannedRun run) {
		Step step = run.next().orElseThrow();
		List<Count> pieces = run.pieces().stream().filter(piece -> piece.left(step) > 0)
				.map(piece -> new Count(piece.job(), piece.of(), piece.left(step), 0)).toList();
		return new RunMark(step, pieces, run.unused(), Optional.empty(), true, false, false, "");
	}

	/** That nothing more is to come of a run: what is on it is to be planned again. */
	public static RunMark off(PlannedRun run) {
		return new RunMark(Step.CUT, List.of(), new TreeMap<>(Map.of()), Optional.empty(), true, false, false, "");
	}
}
