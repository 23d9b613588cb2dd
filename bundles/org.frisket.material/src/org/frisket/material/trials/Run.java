package org.frisket.material.trials;

import java.time.Instant;
import java.util.Objects;

/**
 * One operation of a job as it was run, and what came of it.
 *
 * @param id     tells it from every other
 * @param job    id of the job
 * @param metres of line worked, all passes counted
 * @param remark of whoever ran it; may be empty
 */
public record Run(String id, Instant at, String job, StockFacts stock, Setup setup, Settings settings, Verdict verdict,
		double metres, String remark) {

	public Run {
		Objects.requireNonNull(id);
		Objects.requireNonNull(at);
		Objects.requireNonNull(job);
		Objects.requireNonNull(stock);
		Objects.requireNonNull(setup);
		Objects.requireNonNull(settings);
		Objects.requireNonNull(verdict);
		Objects.requireNonNull(remark);
		if (!(metres >= 0 && metres < 1e9)) {
			throw new IllegalArgumentException("a run of " + metres + " m");
		}
	}
}
