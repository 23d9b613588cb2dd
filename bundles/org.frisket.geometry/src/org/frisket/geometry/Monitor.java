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

	/** @throws CancellationException if the user has cancelled */
	default void check() {
		if (isCancelled()) {
			throw new CancellationException();
		}
	}
}
