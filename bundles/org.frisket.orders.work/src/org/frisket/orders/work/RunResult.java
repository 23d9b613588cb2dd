package org.frisket.orders.work;

import java.util.List;

import org.frisket.model.Stage;

/**
 * What came of saying that something was done.
 *
 * @param run   as it is now
 * @param moves jobs that went to another stage
 * @param notes what is worth knowing, a sentence each
 */
public record RunResult(PlannedRun run, List<Move> moves, List<String> notes) {

	/** @param number of the job */
	public record Move(long number, Stage from, Stage to) {
	}

	public RunResult {
		moves = List.copyOf(moves);
		notes = List.copyOf(notes);
	}
}
