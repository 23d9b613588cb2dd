package org.frisket.orders.paper.quote;

/** Where taxes are rounded. */
public enum Rounding {
	/** The tax of all that has one rate is worked out and rounded once. */
	TOTAL,
	/** The tax of each line is rounded, and then added up. */
	LINE
}
