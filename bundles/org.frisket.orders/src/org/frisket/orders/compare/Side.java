package org.frisket.orders.compare;

/** Whose state of a job. */
public enum Side {

	/** What was changed at this desk. */
	MINE,

	/** What is in the order book by now. */
	THEIRS;

	Side other() {
		return this == MINE ? THEIRS : MINE;
	}
}
