package org.frisket.geometry.internal.outset;

/** Rims touch or coincide, so that it cannot be told which of them bound the offset. */
final class Unclear extends Exception {

	private static final long serialVersionUID = 1L;

	/** Without a trace: it is caught where the offset was asked for. */
	Unclear() {
		super(null, null, false, false);
	}
}
