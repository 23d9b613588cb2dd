package org.frisket.export.plan;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

/**
 * What became of the files of a hand-off, in their order.
 *
 * @param calledOff how it ended before its end; null if it did not
 */
public record HandoffReport(List<Outcome> outcomes, CancellationException calledOff) {

	/** @param failure why the file was not written; null if it was */
	public record Outcome(Path target, Exception failure) {

		public Optional<String> trouble() {
			return Optional.ofNullable(failure).map(Exception::getMessage);
		}
	}

	public HandoffReport {
		outcomes = List.copyOf(outcomes);
	}

	static Outcome written(Path target) {
		return new Outcome(target, null);
	}

	static Outcome failed(Path target, Exception failure) {
		return new Outcome(target, failure);
	}

	public List<Path> written() {
		return outcomes.stream().filter(outcome -> outcome.failure() == null).map(Outcome::target).toList();
	}

	public List<Outcome> failed() {
		return outcomes.stream().filter(outcome -> outcome.failure() != null).toList();
	}
}
