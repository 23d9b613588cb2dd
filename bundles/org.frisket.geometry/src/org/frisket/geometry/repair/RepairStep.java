package org.frisket.geometry.repair;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.options.Option;
import org.frisket.geometry.options.OptionValues;

/**
 * One kind of repair. It has a constructor without arguments, holds no state between calls, and makes the same result
 * of the same artwork.
 */
public interface RepairStep {

	/** What a step moves, which decides about its part of the tolerance that a whole course of steps may use. */
	enum Moves {
		/** It takes away or sorts, and moves nothing. */
		NOTHING,
		/** Only open ends of lines, each of them once: what it has moved is no end any more. */
		ENDS,
		/** Anything. */
		ALL
	}

	/** The options it understands, in the order in which a form shows them. */
	List<Option> options();

	/** @param options values for {@link #options()}, defaults filled in */
	default Moves moves(OptionValues options) {
		return Moves.ALL;
	}

	/** Whether it is sure to leave areas alone that it has made itself, which spares a course a second look at them. */
	default boolean settles() {
		return false;
	}

	/**
	 * The artwork with this one thing put right. Nothing moves further than the tolerance, unless an option of the step
	 * allows more in so many words.
	 *
	 * @param options values for {@link #options()}, defaults filled in
	 * @throws IllegalArgumentException if a coordinate is not finite
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	Mended mend(Artwork artwork, OptionValues options, Tolerance tolerance, Monitor monitor);
}
