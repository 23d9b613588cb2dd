package org.frisket.orders.work;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What somebody is about to say of a run, as it is typed. It begins with all that was planned; what is spoiled is not made,
 * unless somebody says so.
 */
public final class DraftMark {

	private final Step step;
	private final List<RunPiece> pieces;
	private final int[] made;
	private final int[] spoiled;
	private final boolean[] said;
	private final SortedMap<StockColour, BigDecimal> used;
	private String time = "";
	private String remark = "";
	private boolean rest;
	private boolean well;
	private boolean offcuts;

	/** @param run that is not done */
	public DraftMark(PlannedRun run) {
		step = run.next().orElseThrow();
		pieces = run.pieces().stream().filter(piece -> piece.left(step) > 0).toList();
		made = pieces.stream().mapToInt(piece -> piece.left(step)).toArray();
		spoiled = new int[pieces.size()];
		said = new boolean[pieces.size()];
		used = run.unused();
	}

	public Step step() {
		return step;
	}

	/** What is left of the run, in the order in which it is asked for. */
	public List<RunPiece> pieces() {
		return pieces;
	}

	public int made(int piece) {
		return made[piece];
	}

	public void make(int piece, int count) {
		made[piece] = count;
		said[piece] = true;
	}

	public void spoil(int piece, int count) {
		spoiled[piece] = count;
		if (!said[piece]) {
			made[piece] = Math.max(0, pieces.get(piece).left(step) - count);
		}
	}

	/** Sheets, or metres of rolls, by stock. */
	public SortedMap<StockColour, BigDecimal> used() {
		return new TreeMap<>(used);
	}

	public void use(StockColour of, BigDecimal amount) {
		used.put(of, amount);
	}

	public void time(String text) {
		time = text;
	}

	public void remark(String text) {
		remark = text;
	}

	/** @param toCome whether the rest of the run is still to be done */
	public void restToCome(boolean toCome) {
		rest = toCome;
	}

	public void wentWell(boolean yes) {
		well = yes;
	}

	public void keepOffcuts(boolean yes) {
		offcuts = yes;
	}

	/** Why it cannot be said like this, a sentence; empty if it can. */
	public Optional<String> problem() {
		try {
			seconds();
			return Optional.empty();
		} catch (IllegalArgumentException wrong) {
			return Optional.of(wrong.getMessage());
		}
	}

	private Optional<BigDecimal> seconds() {
		return time.isBlank() ? Optional.empty() : Optional.of(RunTime.parse(time));
	}

	/** @throws IllegalArgumentException if there is a {@linkplain #problem problem} */
	public RunMark mark() {
		List<RunMark.Count> counts = new ArrayList<>();
		for (int i = 0; i < made.length; i++) {
			counts.add(new RunMark.Count(pieces.get(i).job(), pieces.get(i).of(), made[i], spoiled[i]));
		}
		return new RunMark(step, counts, used, seconds(), !rest, well, offcuts, remark);
	}
}
