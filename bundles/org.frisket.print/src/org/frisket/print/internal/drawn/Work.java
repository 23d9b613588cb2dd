package org.frisket.print.internal.drawn;

import java.io.UncheckedIOException;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;

/** Counts the steps of a drawing: it ends when it is called off, and before it goes on without end. */
final class Work {

	/** More than any art of a studio takes, and a minute's work at the most. */
	static final int MOST_STEPS = 5_000_000;

	private final Monitor monitor;
	private int steps;

	Work(Monitor monitor) {
		this.monitor = monitor;
	}

	/** @throws UncheckedIOException with an {@link ArtException} after too many: renderers swallow those that are checked */
	void step() {
		monitor.check();
		if (++steps > MOST_STEPS) {
			throw new UncheckedIOException(new ArtException(NLS.bind(Messages.Work_endless, MOST_STEPS)));
		}
	}
}
