package org.frisket.material;

/** The shelf cannot take a change; the message says why, for people. */
public final class ShelfException extends Exception {

	private static final long serialVersionUID = 1L;

	ShelfException(String message) {
		super(message);
	}
}
