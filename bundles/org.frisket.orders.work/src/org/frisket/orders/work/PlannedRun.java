package org.frisket.orders.work;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Jobs that were laid together, and what has become of it.
 *
 * @param number   of the run
 * @param job      the number of the job in the order book that holds the layout
 * @param title    of that job
 * @param seconds  that the machine was thought to take
 * @param measured seconds that it took, as far as somebody said so
 * @param closed   steps that nothing more is to come of
 * @param used     of stock, by what was said to be done: sheets, or metres of rolls; leftovers are not counted
 * @param marks    how often something was said to be done and not taken back
 */
public record PlannedRun(long number, long job, String title, Instant at, String by, BigDecimal seconds,
		Optional<BigDecimal> measured, Set<Step> closed, List<RunPiece> pieces, List<RunSheet> sheets,
		SortedMap<StockColour, BigDecimal> used, int marks) {

	/** How far it is. */
	public enum State {
		PLANNED, PARTLY, DONE
	}

	public PlannedRun {
		closed = Set.copyOf(closed);
		pieces = List.copyOf(pieces);
		sheets = List.copyOf(sheets);
		used = new TreeMap<>(used);
	}

	public State state() {
		return closed.contains(Step.CUT) ? State.DONE : marks > 0 ? State.PARTLY : State.PLANNED;
	}

	/** What is to be done next; empty if all is done. */
	public Optional<Step> next() {
		if (closed.contains(Step.CUT)) {
			return Optional.empty();
		}
		boolean print = !closed.contains(Step.PRINT) && pieces.stream().anyMatch(piece -> piece.left(Step.PRINT) > 0);
		return Optional.of(print ? Step.PRINT : Step.CUT);
	}

	/** Its jobs by their numbers, each once. */
	public List<Long> numbers() {
		return pieces.stream().map(RunPiece::number).distinct().sorted().toList();
	}

	/** Whole sheets, or metres of rolls, that were planned, by stock; without leftovers. */
	public SortedMap<StockColour, BigDecimal> planned() {
		return sheets.stream().filter(sheet -> !sheet.isLeftover())
				.collect(Collectors.toMap(RunSheet::of, RunSheet::amount, BigDecimal::add, TreeMap::new));
	}

	/** What was planned and is not used yet, by stock. */
	public SortedMap<StockColour, BigDecimal> unused() {
		SortedMap<StockColour, BigDecimal> unused = planned();
		unused.replaceAll((of, amount) -> amount.subtract(used.getOrDefault(of, BigDecimal.ZERO)).max(BigDecimal.ZERO));
		return unused;
	}
}
