package org.frisket.material.trials;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.eclipse.osgi.util.NLS;

/**
 * A grid of trials over two parameters, and the verdicts so far. It knows the settings of every cell, for a job can only
 * hold the passes of an operation.
 *
 * @param id       tells it from every other
 * @param base     the settings of what is not swept
 * @param across   what changes from column to column
 * @param down     what changes from row to row
 * @param wear     how far the edge was worn: 0 for a new one, 1 for a dull one
 * @param verdicts of the cells that were judged
 */
public record TestSheet(String id, LocalDate day, StockFacts stock, Setup setup, Settings base, Sweep across,
		Sweep down, double wear, SortedMap<CellPlace, Verdict> verdicts) {

	public TestSheet {
		Objects.requireNonNull(id);
		Objects.requireNonNull(day);
		if (across.parameter() == down.parameter()) {
			throw new IllegalArgumentException(NLS.bind(Messages.TestSheet_same, across.parameter().word()));
		}
		verdicts = Collections.unmodifiableSortedMap(new TreeMap<>(verdicts));
		for (CellPlace place : verdicts.keySet()) {
			if (!has(place, across, down)) {
				throw new IllegalArgumentException(noCell(place.toString(), across, down));
			}
		}
	}

	private static boolean has(CellPlace place, Sweep across, Sweep down) {
		return place.column() >= 0 && place.column() < across.values().size() && place.row() >= 0
				&& place.row() < down.values().size();
	}

	private static String noCell(String text, Sweep across, Sweep down) {
		return NLS.bind(Messages.TestSheet_noCell, text,
				new CellPlace(across.values().size() - 1, down.values().size() - 1));
	}

	/** All cells, row by row. */
	public List<CellPlace> places() {
		List<CellPlace> places = new ArrayList<>();
		for (int row = 0; row < down.values().size(); row++) {
			for (int column = 0; column < across.values().size(); column++) {
				places.add(new CellPlace(column, row));
			}
		}
		return places;
	}

	/**
	 * The cell of a name such as {@code B3}.
	 *
	 * @throws IllegalArgumentException if the sheet has no such cell; the message names the last one it has
	 */
	public CellPlace place(String name) {
		return places().stream().filter(place -> place.toString().equalsIgnoreCase(name.strip())).findFirst()
				.orElseThrow(() -> new IllegalArgumentException(noCell(name, across, down)));
	}

	/** How a cell is worked. */
	public Settings settings(CellPlace place) {
		return base.with(across.parameter(), across.values().get(place.column())).with(down.parameter(),
				down.values().get(place.row()));
	}

	public Optional<Verdict> verdict(CellPlace place) {
		return Optional.ofNullable(verdicts.get(place));
	}

	/** The sheet with more verdicts; a cell that was judged before is judged anew. */
	public TestSheet with(Map<CellPlace, Verdict> more) {
		SortedMap<CellPlace, Verdict> all = new TreeMap<>(verdicts);
		all.putAll(more);
		return new TestSheet(id, day, stock, setup, base, across, down, wear, all);
	}

	/** The sheet with a verdict of a cell, or without one. */
	public TestSheet judged(CellPlace place, Optional<Verdict> verdict) {
		SortedMap<CellPlace, Verdict> all = new TreeMap<>(verdicts);
		verdict.ifPresentOrElse(given -> all.put(place, given), () -> all.remove(place));
		return new TestSheet(id, day, stock, setup, base, across, down, wear, all);
	}

	/** The judged cells as trials; a cell's trial always has the same id. */
	public List<Trial> trials() {
		return verdicts.entrySet().stream().map(each -> new Trial(id + "-" + each.getKey(), day, stock, setup,
				settings(each.getKey()), each.getValue(), wear, id)).toList();
	}

	/** The best window on it; empty while no cell is good. */
	public Optional<GoodWindow> window() {
		return GoodWindow.of(this);
	}
}
