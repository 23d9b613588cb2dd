package org.frisket.orders.compare;

import java.util.List;

/**
 * What one side has done to something.
 *
 * @param words what was changed, each a few words such as {@code text “Ferry” → “Ferries”}; empty where all of it came
 *              or went
 */
public record Difference(Kind kind, List<String> words) {

	/** What became of it. */
	public enum Kind {
		NONE, ADDED, REMOVED, CHANGED
	}

	static final Difference NONE = new Difference(Kind.NONE, List.of());

	/** Whether anything was done to it. */
	public boolean isAny() {
		return kind != Kind.NONE;
	}
}
