package org.frisket.impose;

/**
 * How long to look for better layouts: by the clock, or by steps, which gives the same layout wherever it is run.
 *
 * @param seconds of the clock; infinite for none
 * @param steps   questions asked of each of the searchers; {@link Long#MAX_VALUE} for no limit
 * @param seed    of all chance
 */
public record Budget(double seconds, long steps, long seed) {

	/** @throws IllegalArgumentException unless one of both is limited */
	public Budget {
		if (!(seconds >= 0) || steps < 0 || Double.isInfinite(seconds) && steps == Long.MAX_VALUE) {
			throw new IllegalArgumentException("no budget: " + seconds + " s, " + steps + " steps");
		}
	}

	public static Budget seconds(double seconds, long seed) {
		return new Budget(seconds, Long.MAX_VALUE, seed);
	}

	public static Budget steps(long steps, long seed) {
		return new Budget(Double.POSITIVE_INFINITY, steps, seed);
	}
}
