package org.frisket.orders.stages;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.frisket.orders.StageStep;

/** Something that must be so before a job goes to another stage. */
public interface StageRule {

	/** Small letters and hyphens. */
	String id();

	/** For people. */
	String title();

	/** What it does, in a sentence for people; as long as nothing better is said, its title. */
	default String description() {
		return title();
	}

	/** Whether it holds as long as a studio has not decided. */
	default boolean isUsual() {
		return true;
	}

	/**
	 * What is against a step, for people; empty if nothing is.
	 *
	 * @param blocking asked only if it matters: the blocking findings of the job as it is kept, one text for each
	 */
	Optional<String> objection(StageStep step, Supplier<List<String>> blocking);
}
