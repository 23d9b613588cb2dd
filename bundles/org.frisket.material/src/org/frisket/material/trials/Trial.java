package org.frisket.material.trials;

import java.time.LocalDate;
import java.util.Objects;

/**
 * One test cut and what came of it.
 *
 * @param id    tells it from every other
 * @param day   when it was made
 * @param wear  how far the edge was worn then: 0 for a new one, 1 for a dull one
 * @param sheet id of the test sheet it was a cell of; empty if it was none
 */
public record Trial(String id, LocalDate day, StockFacts stock, Setup setup, Settings settings, Verdict verdict,
		double wear, String sheet) {

	public Trial {
		Objects.requireNonNull(id);
		Objects.requireNonNull(day);
		Objects.requireNonNull(stock);
		Objects.requireNonNull(setup);
		Objects.requireNonNull(settings);
		Objects.requireNonNull(verdict);
		Objects.requireNonNull(sheet);
		if (!(wear >= 0)) {
			throw new IllegalArgumentException("an edge worn to " + wear);
		}
	}

	/** Whether the edge was dull: the verdict then says more of the blade than of the stock. */
	public boolean isDull() {
		return wear >= 1;
	}
}
