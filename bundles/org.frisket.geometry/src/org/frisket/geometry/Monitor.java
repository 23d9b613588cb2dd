package org.frisket.geometry;

import java.util.concurrent.CancellationException;

/** Progress and cancel of a long computation, free of any toolkit. */
@FunctionalInterface
public interface Monitor {

	/** Never cancelled, tells nobody. */
	Monitor NONE = () -> false;

	boolean isCancelled();

	/** Told now and then how much is done, from 0 to 1. */
	default void worked(double fraction) {
	}

	/** For a step of the work: all of it is told as so much of the whole. @param from from 0 to 1, as is {@code to} */
	default Monitor part(double from, double to) {
		Monitor whole = this;
		return new Monitor() {

			@Override
			public boolean isCancelled() {
				return whole.isCancelled();
			}

			@Override
			public void worked(double fraction) {
				whole.worked(from + (to - from) * fraction);
			}
		};
	}

	/** For one of several steps of the same length. @param index from 0 */
	default Monitor part(int index, int count) {
		return part((double) index / count, (index + 1.0) / count);
	}

	/** @throws CancellationException if the user has cancelled */
	default void check() {
		if (isCancelled()) {
			throw new CancellationException();
		}
	}
}
