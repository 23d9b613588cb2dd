package org.frisket.geometry;

import java.util.function.Supplier;

/** Keeps what was worked out for the next time that it is asked for. */
@FunctionalInterface
public interface Memory {

	/** Keeps nothing. */
	Memory NONE = new Memory() {
		@Override
		public <R> R get(Object key, Supplier<R> computation) {
			return computation.get();
		}
	};

	/**
	 * The kept result, or a new one.
	 *
	 * @param key equal for equal results, and never changed
	 */
	<R> R get(Object key, Supplier<R> computation);
}
